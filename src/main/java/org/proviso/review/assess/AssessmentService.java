package org.proviso.review.assess;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.Adjudicator;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.BallotCatalog;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.finding.Records;
import org.proviso.core.adjudication.kept.KeptAssessment;
import org.proviso.core.contests.BallotContests;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.election.ElectionService;
import org.proviso.intake.IntakeService;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseChanged;
import org.proviso.review.CaseStore;
import org.proviso.review.Decision;
import org.proviso.review.DecisionStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.RecordsTogether;
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
@BetweenRooms
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
    public CaseReport now(EnvelopeKey key) {
        return Objects.requireNonNull(reports(List.of(key)).get(key), "every case asked for is reported");
    }

    /** The same as if nobody had looked at the signature yet, for whoever is to look without knowing of it. */
    @Transactional(readOnly = true)
    public CaseReport beforeLooks(EnvelopeKey key) {
        return Objects.requireNonNull(
                each(List.of(key), RecordsTogether::beforeLooks, (report, all, book, asOf) -> report)
                        .get(key),
                "every case asked for is reported");
    }

    /** Cases of one election as the rules see them now; nothing is written. */
    @Transactional(readOnly = true)
    public SortedMap<EnvelopeKey, CaseReport> now(Collection<EnvelopeKey> keys) {
        SortedMap<EnvelopeKey, CaseReport> reports = new TreeMap<>();
        lots(keys).forEach(lot -> reports.putAll(reports(lot)));
        return reports;
    }

    /** What was assessed last. */
    @Transactional(readOnly = true)
    public Optional<AssessmentRow> latest(EnvelopeKey key) {
        return assessments.latest(key);
    }

    /** What was assessed last of every case of an election, by envelope number. */
    @Transactional(readOnly = true)
    public List<AssessmentRow> latest(ElectionId electionId) {
        return assessments.latest(electionId);
    }

    /** Settled cases that were assessed under other rules than those in force; they keep the rules they had. */
    @Transactional(readOnly = true)
    public List<StaleCase> stale(ElectionId electionId) {
        return assessments.stale(electionId, desk.book(electionId).pack().hash());
    }

    /** Assesses a case, without writing it down yet. */
    public AssessedCase assess(EnvelopeKey key) {
        return Objects.requireNonNull(assess(List.of(key)).get(key), "every case asked for is assessed");
    }

    /** Assesses cases of one election, some at a time, each lot at one moment and read together. */
    public SortedMap<EnvelopeKey, AssessedCase> assess(Collection<EnvelopeKey> keys) {
        SortedMap<EnvelopeKey, AssessedCase> assessed = new TreeMap<>();
        lots(keys).forEach(lot -> assessed.putAll(together(lot)));
        return assessed;
    }

    /** Cases in their order, so many together as are read and held at once. */
    static List<List<EnvelopeKey>> lots(Collection<EnvelopeKey> keys) {
        List<EnvelopeKey> all = keys.stream().sorted().toList();
        List<List<EnvelopeKey>> lots = new ArrayList<>();
        for (int start = 0; start < all.size(); start += TOGETHER) {
            lots.add(all.subList(start, Math.min(all.size(), start + TOGETHER)));
        }
        return lots;
    }

    /** The cases with what is kept of them. */
    private SortedMap<EnvelopeKey, AssessedCase> together(List<EnvelopeKey> keys) {
        BallotCatalog ballots = elections.ballots(keys.get(0).electionId());
        return each(keys, (report, all, book, asOf) -> {
            EnvelopeNumber number = report.envelope().envelopeNo();
            return new AssessedCase(
                    report, KeptAssessment.of(report, all.noticesSent(number), book, asOf), ballot(report, ballots));
        });
    }

    private SortedMap<EnvelopeKey, CaseReport> reports(List<EnvelopeKey> keys) {
        return each(keys, (report, all, book, asOf) -> report);
    }

    /** What is wanted of a case, from its report and from what that was made of. */
    private interface Wanted<T> {
        T of(CaseReport report, Records all, DeadlineBook book, LocalDateTime asOf);
    }

    private <T> SortedMap<EnvelopeKey, T> each(List<EnvelopeKey> keys, Wanted<T> wanted) {
        return each(keys, all -> all, wanted);
    }

    private <T> SortedMap<EnvelopeKey, T> each(
            List<EnvelopeKey> keys, UnaryOperator<RecordsTogether> known, Wanted<T> wanted) {
        ElectionId electionId = keys.get(0).electionId();
        DeadlineBook book = desk.book(electionId);
        LocalDateTime asOf = desk.now(electionId);
        Set<EnvelopeNumber> numbers = keys.stream().map(EnvelopeKey::envelopeNo).collect(Collectors.toSet());
        Map<EnvelopeNumber, Envelope> envelopes = intake.envelopes(electionId, numbers).stream()
                .collect(Collectors.toMap(Envelope::envelopeNo, Function.identity()));
        Map<EnvelopeNumber, Link> newest = links.newest(electionId, numbers);
        Records all = known.apply(records.together(electionId, envelopes.values(), newest));
        Adjudicator adjudicator = new Adjudicator(all, book, asOf);
        SortedMap<EnvelopeKey, T> found = new TreeMap<>();
        for (EnvelopeKey key : keys) {
            CaseReport report = adjudicator.report(
                    Optional.ofNullable(envelopes.get(key.envelopeNo())).orElseThrow(),
                    Optional.ofNullable(newest.get(key.envelopeNo())).orElseThrow());
            found.put(key, wanted.of(report, all, book, asOf));
        }
        return found;
    }

    /** Writes down what a proposal or a decision on a locked case rests on; its number. */
    @Transactional(propagation = Propagation.MANDATORY)
    public int write(EnvelopeKey key, AssessedCase assessed) {
        return Objects.requireNonNull(
                write(Map.of(key, assessed)).get(key), "an assessment that is written down has its number");
    }

    /** The same of several cases of one election. */
    @Transactional(propagation = Propagation.MANDATORY)
    public Map<EnvelopeKey, Integer> write(Map<EnvelopeKey, AssessedCase> assessed) {
        return assessed.isEmpty() ? Map.of() : assessments.insert(electionOf(assessed), kept(assessed));
    }

    /** Assesses locked cases of one election anew, and writes down what says something new. */
    @Transactional(propagation = Propagation.MANDATORY)
    public SortedMap<EnvelopeKey, CaseReport> renew(Collection<EnvelopeKey> keys) {
        SortedMap<EnvelopeKey, CaseReport> reports = new TreeMap<>();
        for (List<EnvelopeKey> lot : lots(keys)) {
            SortedMap<EnvelopeKey, AssessedCase> assessed = together(lot);
            assessed.forEach((key, assessedCase) -> reports.put(key, assessedCase.report()));
            assessed.keySet().removeAll(assessments.sayingTheSame(electionOf(assessed), kept(assessed)));
            write(assessed);
        }
        return reports;
    }

    /** Tells the later rooms how held cases of one election stand, as the rules see them now; nothing is written. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void announceAnew(Collection<EnvelopeKey> keys) {
        lots(keys).forEach(lot -> announce(reports(lot)));
    }

    private static ElectionId electionOf(Map<EnvelopeKey, AssessedCase> assessed) {
        return assessed.keySet().iterator().next().electionId();
    }

    private static Map<EnvelopeKey, List<KeptAssessment>> kept(Map<EnvelopeKey, AssessedCase> assessed) {
        Map<EnvelopeKey, List<KeptAssessment>> kept = new TreeMap<>();
        assessed.forEach((key, assessedCase) -> kept.put(key, assessedCase.kept()));
        return kept;
    }

    /** Tells the later rooms how cases of one election stand; the last step of an act, after the ledger. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void announce(SortedMap<EnvelopeKey, CaseReport> reports) {
        if (reports.isEmpty()) {
            return;
        }
        ElectionId electionId = reports.firstKey().electionId();
        ResolvedPack pack = desk.book(electionId).pack();
        List<EnvelopeNumber> numbers =
                reports.keySet().stream().map(EnvelopeKey::envelopeNo).toList();
        Map<EnvelopeNumber, EnvelopeCase> now = cases.find(electionId, numbers);
        Map<EnvelopeNumber, Decision> standing = decisions.standing(electionId, numbers);
        reports.forEach((key, report) -> {
            EnvelopeCase envelopeCase =
                    Optional.ofNullable(now.get(key.envelopeNo())).orElseThrow();
            Optional<Decision> decision = Optional.ofNullable(standing.get(key.envelopeNo()));
            rooms.publishEvent(new CaseChanged(key, envelopeCase.state(), report, pack, decision));
        });
    }

    private static Decision.DecidedBallot ballot(CaseReport report, BallotCatalog ballots) {
        BallotContests contests = report.settled().facts().contests();
        String right = contests == null ? "" : String.join(";", ballots.stylesWith(contests.right()));
        return new Decision.DecidedBallot(
                report.envelope().cast().ballotStyle(), right, report.settled().heldApart());
    }
}
