package org.proviso.review.assess;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
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
import org.proviso.review.EnvelopeCase;
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

    /** So many are held in memory with what they were assessed from. */
    private static final int TOGETHER = 500;

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
        return assess(List.of(key)).get(key);
    }

    /** Assesses cases of one election, some at a time, each lot at one moment and read together. */
    public SortedMap<CaseKey, AssessedCase> assess(Collection<CaseKey> keys) {
        SortedMap<CaseKey, AssessedCase> assessed = new TreeMap<>();
        lots(keys).forEach(lot -> assessed.putAll(together(lot)));
        return assessed;
    }

    /** Cases in their order, so many together as are read and held at once. */
    static List<List<CaseKey>> lots(Collection<CaseKey> keys) {
        List<CaseKey> all = keys.stream().sorted().toList();
        List<List<CaseKey>> lots = new ArrayList<>();
        for (int start = 0; start < all.size(); start += TOGETHER) {
            lots.add(all.subList(start, Math.min(all.size(), start + TOGETHER)));
        }
        return lots;
    }

    private SortedMap<CaseKey, AssessedCase> together(List<CaseKey> keys) {
        String electionId = keys.get(0).electionId();
        DeadlineBook book = desk.book(electionId);
        LocalDateTime asOf = desk.now(electionId);
        Set<String> numbers = keys.stream().map(CaseKey::envelopeNo).collect(Collectors.toSet());
        Map<String, Envelope> envelopes = intake.envelopes(electionId, numbers).stream()
                .collect(Collectors.toMap(Envelope::envelopeNo, Function.identity()));
        Map<String, Link> newest = links.newest(electionId, numbers);
        Records all = records.together(electionId, envelopes.values(), newest);
        Adjudicator adjudicator = new Adjudicator(all, book, asOf);
        BallotCatalog ballots = elections.ballots(electionId);
        SortedMap<CaseKey, AssessedCase> assessed = new TreeMap<>();
        for (CaseKey key : keys) {
            CaseReport report = adjudicator.report(
                    Optional.ofNullable(envelopes.get(key.envelopeNo())).orElseThrow(),
                    Optional.ofNullable(newest.get(key.envelopeNo())).orElseThrow());
            assessed.put(
                    key,
                    new AssessedCase(
                            report,
                            KeptAssessment.of(report, all.noticesSent(key.envelopeNo()), book, asOf),
                            ballot(report, ballots)));
        }
        return assessed;
    }

    /** Writes down what a proposal or a decision on a locked case rests on; its number. */
    @Transactional(propagation = Propagation.MANDATORY)
    public int write(CaseKey key, AssessedCase assessed) {
        return write(Map.of(key, assessed)).get(key);
    }

    /** The same of several cases of one election. */
    @Transactional(propagation = Propagation.MANDATORY)
    public Map<CaseKey, Integer> write(Map<CaseKey, AssessedCase> assessed) {
        return assessed.isEmpty() ? Map.of() : assessments.insert(electionOf(assessed), kept(assessed));
    }

    /** Assesses locked cases of one election anew, and writes down what says something new. */
    @Transactional(propagation = Propagation.MANDATORY)
    public SortedMap<CaseKey, CaseReport> renew(Collection<CaseKey> keys) {
        SortedMap<CaseKey, CaseReport> reports = new TreeMap<>();
        for (List<CaseKey> lot : lots(keys)) {
            SortedMap<CaseKey, AssessedCase> assessed = together(lot);
            assessed.forEach((key, one) -> reports.put(key, one.report()));
            assessed.keySet().removeAll(assessments.sayingTheSame(electionOf(assessed), kept(assessed)));
            write(assessed);
        }
        return reports;
    }

    /** Tells the later rooms how held cases of one election stand, as the rules see them now; nothing is written. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void announceAnew(Collection<CaseKey> keys) {
        for (List<CaseKey> lot : lots(keys)) {
            SortedMap<CaseKey, CaseReport> reports = new TreeMap<>();
            together(lot).forEach((key, one) -> reports.put(key, one.report()));
            announce(reports);
        }
    }

    private static String electionOf(Map<CaseKey, AssessedCase> assessed) {
        return assessed.keySet().iterator().next().electionId();
    }

    private static Map<CaseKey, List<KeptAssessment>> kept(Map<CaseKey, AssessedCase> assessed) {
        Map<CaseKey, List<KeptAssessment>> kept = new TreeMap<>();
        assessed.forEach((key, one) -> kept.put(key, one.kept()));
        return kept;
    }

    /** Tells the later rooms how cases of one election stand; the last step of an act, after the ledger. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void announce(SortedMap<CaseKey, CaseReport> reports) {
        if (reports.isEmpty()) {
            return;
        }
        String electionId = reports.firstKey().electionId();
        List<String> numbers =
                reports.keySet().stream().map(CaseKey::envelopeNo).toList();
        Map<String, EnvelopeCase> now = cases.find(electionId, numbers);
        Map<String, Decision> standing = decisions.standing(electionId, numbers);
        reports.forEach((key, report) -> {
            EnvelopeCase one = Optional.ofNullable(now.get(key.envelopeNo())).orElseThrow();
            Optional<Decision> decision = Optional.ofNullable(standing.get(key.envelopeNo()));
            rooms.publishEvent(new CaseChanged(key, one.state(), report, decision));
        });
    }

    private static Decision.DecidedBallot ballot(CaseReport report, BallotCatalog ballots) {
        BallotContests contests = report.settled().facts().contests();
        String right = contests == null ? "" : String.join(";", ballots.stylesWith(contests.right()));
        return new Decision.DecidedBallot(
                report.envelope().cast().ballotStyle(), right, report.settled().heldApart());
    }
}
