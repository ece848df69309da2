package org.proviso.review.assess;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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

    /** Every case whose envelope is keyed. */
    SortedMap<EnvelopeKey, CaseReport> all(ElectionId electionId, DeadlineBook book, LocalDateTime asOf) {
        List<EnvelopeKey> wanted = cases.all(electionId).stream()
                .filter(envelopeCase -> envelopeCase.state() != CaseState.RECEIVED)
                .map(EnvelopeCase::key)
                .toList();
        return reports(electionId, wanted, book, asOf);
    }

    /** These cases, whose envelopes are keyed. */
    SortedMap<EnvelopeKey, CaseReport> reports(
            ElectionId electionId, List<EnvelopeKey> wanted, DeadlineBook book, LocalDateTime asOf) {
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
