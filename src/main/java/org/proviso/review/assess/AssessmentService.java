package org.proviso.review.assess;

import java.time.LocalDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.proviso.core.Envelope;
import org.proviso.core.adjudication.Adjudicator;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.BallotCatalog;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.finding.Records;
import org.proviso.core.adjudication.kept.KeptAssessment;
import org.proviso.core.contests.BallotContests;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.election.ElectionService;
import org.proviso.intake.IntakeService;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseChanged;
import org.proviso.review.CaseKey;
import org.proviso.review.CaseStore;
import org.proviso.review.Decision;
import org.proviso.review.DecisionStore;
import org.proviso.review.facts.CaseRecordsService;
import org.proviso.review.facts.LinkStore;
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

    /** What the rules say of a case, and the same as it is kept. */
    public record AssessedCase(CaseReport report, List<KeptAssessment> kept, Decision.DecidedBallot ballot) {}

    private final CaseRecordsService records;
    private final AssessmentStore assessments;
    private final DecisionStore decisions;
    private final CaseStore cases;
    private final LinkStore links;
    private final IntakeService intake;
    private final ElectionService elections;
    private final CaseActSteps desk;
    private final ApplicationEventPublisher rooms;

    AssessmentService(
            CaseRecordsService records,
            AssessmentStore assessments,
            DecisionStore decisions,
            CaseStore cases,
            LinkStore links,
            IntakeService intake,
            ElectionService elections,
            CaseActSteps desk,
            ApplicationEventPublisher rooms) {
        this.records = records;
        this.assessments = assessments;
        this.decisions = decisions;
        this.cases = cases;
        this.links = links;
        this.intake = intake;
        this.elections = elections;
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

    /** What was assessed last of every case of an election, by envelope number. */
    @Transactional(readOnly = true)
    public List<AssessmentRow> latest(String electionId) {
        return assessments.latest(electionId);
    }

    /** Settled cases that were assessed under other rules than those in force; they keep the rules they had. */
    @Transactional(readOnly = true)
    public List<StaleCase> stale(String electionId) {
        return assessments.stale(electionId, desk.book(electionId).pack().hash());
    }

    /** Assesses a case, without writing it down yet. */
    public AssessedCase assess(CaseKey key) {
        DeadlineBook book = desk.book(key.electionId());
        LocalDateTime asOf = desk.now(key.electionId());
        Envelope envelope = intake.envelope(key.electionId(), key.envelopeNo()).orElseThrow();
        Link link = links.newest(key).orElseThrow();
        Records all = records.of(key.electionId());
        CaseReport report = new Adjudicator(all, book, asOf).report(envelope, link);
        return new AssessedCase(
                report,
                KeptAssessment.of(report, all.noticesSent(key.envelopeNo()), book, asOf),
                ballot(report, elections.ballots(key.electionId())));
    }

    /** Writes down what a proposal or a decision on a locked case rests on; its number. */
    @Transactional(propagation = Propagation.MANDATORY)
    public int write(CaseKey key, AssessedCase assessed) {
        return assessments.insert(key, assessed.kept());
    }

    /** Assesses locked cases anew, and writes down what says something new. */
    @Transactional(propagation = Propagation.MANDATORY)
    public SortedMap<CaseKey, CaseReport> renew(Collection<CaseKey> keys) {
        SortedMap<CaseKey, CaseReport> reports = new TreeMap<>();
        for (CaseKey key : keys) {
            AssessedCase assessed = assess(key);
            if (!assessments.saysTheSame(key, assessed.kept())) {
                write(key, assessed);
            }
            reports.put(key, assessed.report());
        }
        return reports;
    }

    /** Tells the later rooms how cases stand; the last step of an act, after the ledger. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void announce(SortedMap<CaseKey, CaseReport> reports) {
        reports.forEach((key, report) -> rooms.publishEvent(
                new CaseChanged(key, cases.find(key).orElseThrow().state(), report, decisions.standing(key))));
    }

    private static Decision.DecidedBallot ballot(CaseReport report, BallotCatalog ballots) {
        BallotContests contests = report.settled().facts().contests();
        String right = contests == null ? "" : String.join(";", ballots.stylesWith(contests.right()));
        return new Decision.DecidedBallot(
                report.envelope().cast().ballotStyle(), right, report.settled().heldApart());
    }
}
