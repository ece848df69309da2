package org.proviso.canvass.observers;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.adjudication.judging.DueAsk;
import org.proviso.intake.IntakeService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.CaseService;
import org.proviso.review.Decision;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.assess.SecondLookVeil;
import org.proviso.review.assess.SecondLooks;
import org.proviso.review.decide.DecisionService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Cases for observers: what they may read without learning whose envelope it is. */
@Service
public class ObserverCaseService {

    private final CaseService cases;
    private final DecisionService decisions;
    private final SecondLooks looks;
    private final SecondLookVeil veil;
    private final IntakeService intake;
    private final LedgerService ledger;
    private final AccessService access;

    ObserverCaseService(
            CaseService cases,
            DecisionService decisions,
            SecondLooks looks,
            SecondLookVeil veil,
            IntakeService intake,
            LedgerService ledger,
            AccessService access) {
        this.cases = cases;
        this.decisions = decisions;
        this.looks = looks;
        this.veil = veil;
        this.intake = intake;
        this.ledger = ledger;
        this.access = access;
    }

    /** How many there are. */
    @Transactional(readOnly = true)
    public int count(ElectionId electionId) {
        access.demand(Permission.READ_REDACTED_CASES);
        return cases.count(electionId);
    }

    /** A page of them by envelope number. */
    @Transactional(readOnly = true)
    public List<ObserverCaseRow> page(ElectionId electionId, int offset, int limit) {
        access.demand(Permission.READ_REDACTED_CASES);
        List<EnvelopeCase> page = cases.page(electionId, offset, limit);
        Map<EnvelopeNumber, Envelope> envelopes = intake
                .envelopes(
                        electionId,
                        page.stream()
                                .map(envelopeCase -> envelopeCase.key().envelopeNo())
                                .collect(Collectors.toSet()))
                .stream()
                .collect(Collectors.toMap(Envelope::envelopeNo, Function.identity()));
        return page.stream()
                .map(envelopeCase -> line(
                        envelopeCase,
                        envelopes.get(envelopeCase.key().envelopeNo()),
                        decisions.standing(envelopeCase.key())))
                .toList();
    }

    /** One case as it is now; empty if there is no such envelope. */
    @Transactional(readOnly = true)
    public Optional<ObserverCase> find(EnvelopeKey key) {
        OfficeUser reader = access.demand(Permission.READ_REDACTED_CASES);
        return cases.find(key).map(found -> open(found, reader));
    }

    private ObserverCase open(EnvelopeCase envelopeCase, OfficeUser reader) {
        CaseReport report = looks.report(envelopeCase.key(), reader);
        Optional<Decision> decision = decisions.standing(envelopeCase.key());
        LocalDateTime at = report.envelope().cast().at();
        return new ObserverCase(
                line(envelopeCase, report.envelope(), decision),
                at == null ? null : at.toLocalDate(),
                report.envelope().cast().issueReasons().stream()
                        .map(DateWords::code)
                        .sorted()
                        .toList(),
                report.settled().answered().stream()
                        .map(ObserverAnswer::of)
                        .filter(answer -> answer.kind() != ObserverAnswer.Result.NOT_ASKED)
                        .toList(),
                report.recommendation().words(),
                report.asks().stream().map(ObserverCaseService::words).toList(),
                decision,
                veil.known(
                        envelopeCase.key(),
                        ledger.about(
                                LedgerChain.of(envelopeCase.key().electionId()),
                                envelopeCase.key().envelopeNo()),
                        reader));
    }

    private static ObserverCaseRow line(
            EnvelopeCase envelopeCase, @Nullable Envelope envelope, Optional<Decision> decision) {
        return new ObserverCaseRow(
                envelopeCase.key().envelopeNo(),
                envelope == null ? "" : envelope.cast().votingLocation(),
                envelope != null && envelope.cast().extendedHours().isYes(),
                envelopeCase.state(),
                decision.map(Decision::as));
    }

    private static String words(DueAsk ask) {
        String what = DateWords.code(ask.ask().code());
        return ask.deadline()
                .map(deadline -> what + ", until "
                        + DateWords.longDate(deadline.lastMoment().toLocalDate()) + ", "
                        + DateWords.hour(deadline.lastMoment()))
                .orElse(what);
    }
}
