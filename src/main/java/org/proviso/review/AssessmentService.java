package org.proviso.review;

import java.time.LocalDateTime;
import java.util.Collection;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.proviso.core.Envelope;
import org.proviso.core.adjudication.Adjudicator;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.Link;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.intake.IntakeService;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * What the rules say of a case, from the tables as they are at that moment of the office's clock. An assessment is
 * written down when it says something new, and whenever somebody proposes or decides on it.
 */
@Service
public class AssessmentService {

    /** What the rules say, as of when (local to the county) and by which rules. */
    record Assessed(CaseReport report, LocalDateTime asOf, String packHash) {}

    private final CaseRecordsService records;
    private final AssessmentStore assessments;
    private final DecisionStore decisions;
    private final CaseStore cases;
    private final LinkStore links;
    private final IntakeService intake;
    private final CaseDesk desk;
    private final ApplicationEventPublisher rooms;

    AssessmentService(
            CaseRecordsService records,
            AssessmentStore assessments,
            DecisionStore decisions,
            CaseStore cases,
            LinkStore links,
            IntakeService intake,
            CaseDesk desk,
            ApplicationEventPublisher rooms) {
        this.records = records;
        this.assessments = assessments;
        this.decisions = decisions;
        this.cases = cases;
        this.links = links;
        this.intake = intake;
        this.desk = desk;
        this.rooms = rooms;
    }

    /** The case as the rules see it now; nothing is written. */
    @Transactional(readOnly = true)
    public CaseReport now(CaseKey key) {
        return assess(key).report();
    }

    /** What was assessed last. */
    @Transactional(readOnly = true)
    public Optional<AssessmentRow> latest(CaseKey key) {
        return assessments.latest(key);
    }

    /** Assesses a case, without writing it down yet. */
    Assessed assess(CaseKey key) {
        DeadlineBook book = desk.book(key.electionId());
        LocalDateTime asOf = desk.now(key.electionId());
        return new Assessed(report(key, book, asOf), asOf, book.pack().hash());
    }

    /** Writes down what a proposal or a decision on a locked case rests on; its number. */
    @Transactional(propagation = Propagation.MANDATORY)
    int write(CaseKey key, Assessed assessed) {
        return assessments.insert(key, assessed.report(), assessed.asOf(), assessed.packHash());
    }

    /** Assesses locked cases anew, and writes down what says something new. */
    @Transactional(propagation = Propagation.MANDATORY)
    SortedMap<CaseKey, CaseReport> renew(Collection<CaseKey> keys) {
        SortedMap<CaseKey, CaseReport> reports = new TreeMap<>();
        for (CaseKey key : keys) {
            Assessed assessed = assess(key);
            if (!assessments.saysTheSame(key, assessed.report(), assessed.packHash())) {
                write(key, assessed);
            }
            reports.put(key, assessed.report());
        }
        return reports;
    }

    /** Tells the later rooms how cases stand; the last step of an act, after the ledger. */
    @Transactional(propagation = Propagation.MANDATORY)
    void announce(SortedMap<CaseKey, CaseReport> reports) {
        reports.forEach((key, report) -> rooms.publishEvent(
                new CaseChanged(key, cases.find(key).orElseThrow().state(), report, decisions.standing(key))));
    }

    private CaseReport report(CaseKey key, DeadlineBook book, LocalDateTime asOf) {
        Envelope envelope = intake.envelope(key.electionId(), key.envelopeNo()).orElseThrow();
        Link link = links.newest(key).orElseThrow();
        return new Adjudicator(records.of(key.electionId()), book, asOf).report(envelope, link);
    }
}
