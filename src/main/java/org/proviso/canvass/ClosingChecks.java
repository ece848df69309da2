package org.proviso.canvass;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.canvass.outcomes.EnvelopeGroup;
import org.proviso.canvass.outcomes.EnvelopeGroups;
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
import org.proviso.intake.IntakeService;
import org.proviso.notices.NoticeCounts;
import org.proviso.notices.NoticeFigures;
import org.proviso.notices.NoticeService;
import org.proviso.release.ReleaseFigures;
import org.proviso.release.ReleaseService;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;
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
    private final EnvelopeGroups envelopes;
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
            EnvelopeGroups envelopes,
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
        this.envelopes = envelopes;
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
        return unsettled(electionId, all(electionId));
    }

    private List<BalanceResult> unsettled(ElectionId electionId, List<BalanceResult> all) {
        return explanations.applied(electionId, all).stream()
                .filter(balance -> !balance.isSettled())
                .toList();
    }

    /** How every identity stands in every place, whether or not somebody explained it. */
    List<BalanceResult> all(ElectionId electionId) {
        return reconciled(book.collect(electionId));
    }

    private static List<BalanceResult> reconciled(List<CanvassFigures> figures) {
        return figures.stream()
                .flatMap(accounts -> Reconciliation.reconcile(accounts, Arrays.asList(BalanceRule.values())).stream())
                .toList();
    }

    /** Decisions that a newer record contradicts: each is followed up before the canvass is certified. */
    List<ContradictedDecision> contradicted(ElectionId electionId) {
        return contradicted.open(electionId);
    }

    /** For whoever may close the election: a supervisor reads every room that is asked. */
    ClosingReport report(ElectionId electionId) {
        Election election = elections.find(electionId).orElseThrow();
        List<EnvelopeGroup> all = envelopes.of(election);
        List<BalanceResult> open = unsettled(electionId, reconciled(book.collect(election, all)));
        ClosingWork work = new ClosingWork(open);
        undecided(work, all);
        others.beforeDeciding(electionId).map(Refusal::words).ifPresent(work::beforeDeciding);
        opening(work, electionId, election);
        work.explanations(explanations.standing(electionId));
        work.figures(withReturn(electionId));
        work.contradicted(contradicted(electionId));
        work.totals();
        return new ClosingReport(open, work.lines(), besides(electionId, all));
    }

    /** Voting locations of which a return is here. */
    Set<String> withReturn(ElectionId electionId) {
        return intake.transmittals(electionId).stream()
                .map(Transmittal::votingLocation)
                .collect(Collectors.toSet());
    }

    private static void undecided(ClosingWork work, List<EnvelopeGroup> all) {
        for (EnvelopeGroup group : all) {
            if (group.state() != null && group.isUndecided() && !group.held()) {
                work.undecided(group.state(), group);
            }
        }
    }

    private void opening(ClosingWork work, ElectionId electionId, Election election) {
        List<String> gate =
                releases.gate(electionId).map(Refusal::words).stream().toList();
        List<String> waitForDesk = mailDesk.keptClosed(electionId).entrySet().stream()
                .map(entry -> entry.getKey() + ": " + entry.getValue())
                .toList();
        work.opening(ClosingStep.MAIL_DESK, waitForDesk.size(), waitForDesk);
        work.opening(ClosingStep.BATCH, releases.waiting(electionId).size(), gate);
        work.opening(ClosingStep.KEPT_CLOSED, keptClosed(electionId, election), List.of());
        work.batches(batches.batches(electionId), batches.sheets(electionId));
    }

    /** Envelopes are asked for one by one only where a court keeps any closed. */
    private int keptClosed(ElectionId electionId, Election election) {
        List<CourtOrder> closing = election.orders().stream()
                .filter(CourtOrder::binds)
                .filter(order -> order.kind() == CourtOrder.Kind.HOLD || order.kind() == CourtOrder.Kind.PRESERVE)
                .toList();
        if (closing.isEmpty()) {
            return 0;
        }
        return (int) cases.all(electionId).stream()
                .filter(envelopeCase -> envelopeCase.state() == CaseState.DECIDED)
                .filter(envelopeCase -> envelopeCase.countedPerson() != null)
                .filter(envelopeCase -> isKeptClosed(envelopeCase.key().envelopeNo(), closing))
                .count();
    }

    private static boolean isKeptClosed(EnvelopeNumber envelopeNo, Iterable<CourtOrder> orders) {
        for (CourtOrder order : orders) {
            if (order.keepsClosed(envelopeNo)) {
                return true;
            }
        }
        return false;
    }

    private List<ClosingLine> besides(ElectionId electionId, List<EnvelopeGroup> all) {
        int held = all.stream()
                .filter(group -> group.isUndecided() && group.held())
                .mapToInt(EnvelopeGroup::number)
                .sum();
        NoticeCounts told = notices.counts(electionId);
        List<ClosingLine> lines = new ArrayList<>();
        lines.add(new ClosingLine(ClosingStep.HELD, held, List.of()));
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
