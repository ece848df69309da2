package org.proviso.review.assess;

import java.time.LocalDateTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.Adjudicator;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.intake.IntakeService;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.facts.CaseRecordsService;
import org.proviso.review.facts.LinkStore;
import org.springframework.stereotype.Component;

/** The cases of an election as some rules see them now; nothing is written, and nothing is locked. */
@Component
class CurrentCaseReports {

    private static final Set<CaseState> OVER =
            EnumSet.of(CaseState.RECEIVED, CaseState.DECIDED, CaseState.RELEASED, CaseState.SENT_ON, CaseState.ENDED);

    private final CaseStore cases;
    private final CaseRecordsService records;
    private final LinkStore links;
    private final IntakeService intake;
    private final CaseActSteps desk;

    CurrentCaseReports(
            CaseStore cases, CaseRecordsService records, LinkStore links, IntakeService intake, CaseActSteps desk) {
        this.cases = cases;
        this.records = records;
        this.links = links;
        this.intake = intake;
        this.desk = desk;
    }

    DeadlineBook book(ElectionId electionId) {
        return desk.book(electionId);
    }

    LocalDateTime now(ElectionId electionId) {
        return desk.now(electionId);
    }

    /** Cases that nobody has settled and whose envelope is keyed, under those rules at that moment. */
    SortedMap<EnvelopeKey, CaseReport> unsettled(ElectionId electionId, DeadlineBook book, LocalDateTime asOf) {
        return reports(electionId, book, asOf, false);
    }

    /** Every case whose envelope is keyed. */
    SortedMap<EnvelopeKey, CaseReport> all(ElectionId electionId, DeadlineBook book, LocalDateTime asOf) {
        return reports(electionId, book, asOf, true);
    }

    private SortedMap<EnvelopeKey, CaseReport> reports(
            ElectionId electionId, DeadlineBook book, LocalDateTime asOf, boolean settledToo) {
        List<EnvelopeKey> wanted = cases.all(electionId).stream()
                .filter(envelopeCase ->
                        settledToo ? envelopeCase.state() != CaseState.RECEIVED : !OVER.contains(envelopeCase.state()))
                .map(EnvelopeCase::key)
                .toList();
        SortedMap<EnvelopeKey, CaseReport> reports = new TreeMap<>();
        for (List<EnvelopeKey> lot : AssessmentService.lots(wanted)) {
            List<EnvelopeNumber> numbers =
                    lot.stream().map(EnvelopeKey::envelopeNo).toList();
            Map<EnvelopeNumber, Link> newest = links.newest(electionId, numbers);
            List<Envelope> envelopes = intake.envelopes(electionId, newest.keySet());
            Adjudicator adjudicator = new Adjudicator(records.together(electionId, envelopes, newest), book, asOf);
            envelopes.forEach(envelope -> reports.put(
                    new EnvelopeKey(electionId, envelope.envelopeNo()),
                    adjudicator.report(
                            envelope,
                            Objects.requireNonNull(
                                    newest.get(envelope.envelopeNo()), "only envelopes with a link are read"))));
        }
        return reports;
    }
}
