package org.proviso.canvass;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.canvass.steps.ClosingLine;
import org.proviso.canvass.steps.ClosingStep;
import org.proviso.core.CourtOrder;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Transmittal;
import org.proviso.core.act.Refusal;
import org.proviso.election.ElectionService;
import org.proviso.election.OtherBallots;
import org.proviso.intake.CastEnvelope;
import org.proviso.intake.IntakeService;
import org.proviso.notices.NoticeCounts;
import org.proviso.notices.NoticeFigures;
import org.proviso.notices.NoticeService;
import org.proviso.release.ReleaseFigures;
import org.proviso.release.ReleaseService;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.decide.ContradictedDecision;
import org.proviso.review.decide.ContradictedDecisions;
import org.proviso.review.ends.SentOnEnvelopes;
import org.proviso.review.mail.MailDeskWork;
import org.proviso.review.news.NewerFileService;
import org.springframework.stereotype.Component;

/**
 * What stands in the way of closing an election. The act of closing and the page of what is missing ask the same here:
 * every identity that does not hold is in the report, with the work that is left behind it.
 */
@Component
class ClosingChecks {

    private final CanvassFigureCollector book;
    private final ExplanationStore explanations;
    private final ElectionService elections;
    private final IntakeService intake;
    private final CaseService cases;
    private final ReleaseService releases;
    private final ReleaseFigures batches;
    private final NoticeService notices;
    private final NoticeFigures noticed;
    private final NewerFileService lists;
    private final ContradictedDecisions contradicted;
    private final SentOnEnvelopes sentOn;
    private final OtherBallots others;
    private final MailDeskWork mailDesk;

    ClosingChecks(
            CanvassFigureCollector book,
            ExplanationStore explanations,
            ElectionService elections,
            IntakeService intake,
            CaseService cases,
            ReleaseService releases,
            ReleaseFigures batches,
            NoticeService notices,
            NoticeFigures noticed,
            NewerFileService lists,
            ContradictedDecisions contradicted,
            SentOnEnvelopes sentOn,
            OtherBallots others,
            MailDeskWork mailDesk) {
        this.mailDesk = mailDesk;
        this.sentOn = sentOn;
        this.others = others;
        this.contradicted = contradicted;
        this.book = book;
        this.explanations = explanations;
        this.elections = elections;
        this.intake = intake;
        this.cases = cases;
        this.releases = releases;
        this.batches = batches;
        this.notices = notices;
        this.noticed = noticed;
        this.lists = lists;
    }

    /** The identities that neither hold nor are explained; empty where the election can be closed. */
    List<BalanceResult> open(ElectionId electionId) {
        return explanations.applied(electionId, all(electionId)).stream()
                .filter(balance -> !balance.isSettled())
                .toList();
    }

    /** How every identity stands in every place, whether or not somebody explained it. */
    List<BalanceResult> all(ElectionId electionId) {
        return book.collect(electionId).stream()
                .flatMap(accounts -> Reconciliation.reconcile(accounts, Arrays.asList(BalanceRule.values())).stream())
                .toList();
    }

    /** Decisions that a newer record contradicts: each is followed up before the canvass is certified. */
    List<ContradictedDecision> contradicted(ElectionId electionId) {
        return contradicted.open(electionId);
    }

    /** For whoever may close the election: a supervisor reads every room that is asked. */
    ClosingReport report(ElectionId electionId) {
        List<BalanceResult> open = open(electionId);
        Election election = elections.find(electionId).orElseThrow();
        List<EnvelopeCase> all = cases.all(electionId);
        ClosingWork work = new ClosingWork(open);
        undecided(work, electionId, election, all);
        others.beforeDeciding(electionId).map(Refusal::words).ifPresent(work::beforeDeciding);
        opening(work, electionId, election, all);
        work.explanations(explanations.standing(electionId));
        work.figures(withReturn(electionId));
        work.contradicted(contradicted(electionId));
        work.totals();
        return new ClosingReport(open, work.lines(), besides(electionId, election, all));
    }

    /** Voting locations of which a return is here. */
    Set<String> withReturn(ElectionId electionId) {
        return intake.transmittals(electionId).stream()
                .map(Transmittal::votingLocation)
                .collect(Collectors.toSet());
    }

    private void undecided(ClosingWork work, ElectionId electionId, Election election, List<EnvelopeCase> all) {
        Map<EnvelopeNumber, CastEnvelope> cast = intake.castEnvelopes(electionId).stream()
                .collect(Collectors.toMap(CastEnvelope::envelopeNo, envelope -> envelope));
        all.stream()
                .filter(envelopeCase -> !envelopeCase.state().isOver())
                .filter(envelopeCase ->
                        !EnvelopeCounter.isHeld(envelopeCase.key().envelopeNo(), election))
                .forEach(envelopeCase -> work.undecided(
                        envelopeCase.state(), cast.get(envelopeCase.key().envelopeNo())));
    }

    private void opening(ClosingWork work, ElectionId electionId, Election election, List<EnvelopeCase> all) {
        List<String> gate =
                releases.gate(electionId).map(Refusal::words).stream().toList();
        List<String> waitForDesk = mailDesk.keptClosed(electionId).entrySet().stream()
                .map(entry -> entry.getKey() + ": " + entry.getValue())
                .toList();
        work.opening(ClosingStep.MAIL_DESK, waitForDesk.size(), waitForDesk);
        work.opening(ClosingStep.BATCH, releases.waiting(electionId).size(), gate);
        int keptClosed = (int) all.stream()
                .filter(envelopeCase -> envelopeCase.state() == CaseState.DECIDED)
                .filter(envelopeCase -> envelopeCase.countedPerson() != null)
                .filter(envelopeCase -> isKeptClosed(envelopeCase.key().envelopeNo(), election.orders()))
                .count();
        work.opening(ClosingStep.KEPT_CLOSED, keptClosed, List.of());
        work.batches(batches.batches(electionId), batches.sheets(electionId));
    }

    private static boolean isKeptClosed(EnvelopeNumber envelopeNo, Iterable<CourtOrder> orders) {
        for (CourtOrder order : orders) {
            if (order.keepsClosed(envelopeNo)) {
                return true;
            }
        }
        return false;
    }

    private List<ClosingLine> besides(ElectionId electionId, Election election, List<EnvelopeCase> all) {
        Set<EnvelopeNumber> held = all.stream()
                .filter(envelopeCase -> !envelopeCase.state().isOver())
                .map(envelopeCase -> envelopeCase.key().envelopeNo())
                .filter(number -> EnvelopeCounter.isHeld(number, election))
                .collect(Collectors.toSet());
        NoticeCounts told = notices.counts(electionId);
        List<ClosingLine> lines = new ArrayList<>();
        lines.add(new ClosingLine(ClosingStep.HELD, held.size(), List.of()));
        lines.add(new ClosingLine(ClosingStep.ASK_LETTER, told.askEnvelopesNotSent(), List.of()));
        List<String> untold = noticed.rejectedUntold(electionId).stream()
                .map(EnvelopeNumber::value)
                .toList();
        lines.add(new ClosingLine(ClosingStep.NOT_TOLD, untold.size(), untold));
        lines.add(new ClosingLine(ClosingStep.OUTCOME_LETTER, told.outcomesNotSent(), List.of()));
        List<String> away = sentOn.withoutReceipt(electionId).stream()
                .map(EnvelopeNumber::value)
                .toList();
        lines.add(new ClosingLine(ClosingStep.COUNTY_RECEIPT, away.size(), away));
        int waiting = mailDesk.keptClosed(electionId).size();
        lines.add(new ClosingLine(ClosingStep.MAIL_LINE, mailDesk.open(electionId) - waiting, List.of()));
        lines.add(new ClosingLine(ClosingStep.SET_ASIDE, lists.asideInUse(electionId), List.of()));
        lines.add(new ClosingLine(ClosingStep.LIST, lists.waiting(electionId).size(), List.of()));
        return lines.stream().filter(line -> line.number() > 0).toList();
    }
}
