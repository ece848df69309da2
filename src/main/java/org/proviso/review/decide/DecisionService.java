package org.proviso.review.decide;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.deciding.CountAgainstRules;
import org.proviso.core.deciding.DecisionChecks;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.ledger.Actor;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseGraph;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;
import org.proviso.review.DecidedBy;
import org.proviso.review.Decision;
import org.proviso.review.DecisionStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.Settlement;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.door.CaseDoor;
import org.proviso.review.door.LockedCases;
import org.proviso.review.facts.VoterGroups;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * How a decider's vote takes effect on cases. Whoever calls has recorded the vote in the same transaction: the decision
 * takes effect with it.
 */
@Service
@BetweenRooms
public class DecisionService {

    private final CaseDoor door;
    private final CaseActSteps steps;
    private final CaseStore cases;
    private final DecisionStore decisions;
    private final SettlementChecks checks;
    private final DecisionLedgerEntry entries;
    private final VoterGroups groups;
    private final AssessmentService assessments;
    private final ContradictionStore contradictions;

    DecisionService(
            CaseDoor door,
            CaseActSteps steps,
            CaseStore cases,
            DecisionStore decisions,
            SettlementChecks checks,
            DecisionLedgerEntry entries,
            VoterGroups groups,
            AssessmentService assessments,
            ContradictionStore contradictions) {
        this.contradictions = contradictions;
        this.door = door;
        this.steps = steps;
        this.cases = cases;
        this.decisions = decisions;
        this.checks = checks;
        this.entries = entries;
        this.groups = groups;
        this.assessments = assessments;
    }

    /** The decision that stands. */
    @Transactional(readOnly = true)
    public Optional<Decision> standing(EnvelopeKey key) {
        return decisions.standing(key);
    }

    /** Every decision that stands in an election, by envelope number. */
    @Transactional(readOnly = true)
    public Map<EnvelopeNumber, Decision> standing(ElectionId electionId) {
        return decisions.standing(electionId);
    }

    /** How every envelope of an election was decided as of a moment, by envelope number; what was not decided is left out. */
    @Transactional(readOnly = true)
    public Map<EnvelopeNumber, DecisionOutcome> standingAt(ElectionId electionId, Instant at) {
        return decisions.standingAt(electionId, at);
    }

    /** Those of cases of one election whose voter a record says has voted already. */
    @Transactional(readOnly = true)
    public Set<EnvelopeNumber> knownToHaveVoted(Collection<EnvelopeKey> keys) {
        Set<EnvelopeNumber> voted = new LinkedHashSet<>();
        assessments.now(keys).forEach((key, report) -> {
            if (DecisionChecks.isKnownToHaveVoted(report.settled().answered())) {
                voted.add(key.envelopeNo());
            }
        });
        return voted;
    }

    /** Those of cases of one election that a decision would count against the rules' answer, and how. */
    @Transactional(readOnly = true)
    public Map<EnvelopeNumber, CountAgainstRules> againstTheRules(
            Collection<EnvelopeKey> keys, DecisionOutcome as, Set<String> contests) {
        Map<EnvelopeNumber, CountAgainstRules> against = new LinkedHashMap<>();
        if (as != DecisionOutcome.REJECT) {
            assessments
                    .now(keys)
                    .forEach((key, report) -> CountAgainstRules.of(as, contests, report.settled())
                            .ifPresent(rules -> against.put(key.envelopeNo(), rules)));
        }
        return against;
    }

    /**
     * Locks the cases that will be settled, with the other envelopes of their voters. For whoever records anything before
     * it settles them in the same transaction: the head of the chain is locked last.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void hold(Collection<EnvelopeKey> keys) {
        SortedSet<EnvelopeKey> together = new TreeSet<>(keys);
        together.addAll(groups.others(keys));
        together.forEach(steps::lock);
    }

    /**
     * Settles cases of one election together, all or none, each judged by what the rules say of it at this moment. A
     * refusal names the envelope that it is about.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public ActResult<List<EnvelopeCase>> settle(Collection<Settlement> settlements, DecidedBy by) {
        if (settlements.isEmpty()) {
            return ActResult.accepted(List.of());
        }
        SortedMap<EnvelopeKey, Settlement> wanted = new TreeMap<>();
        settlements.forEach(settlement -> wanted.put(settlement.key(), settlement));
        Map<EnvelopeKey, Integer> versions = new TreeMap<>();
        wanted.forEach((key, settlement) -> versions.put(key, settlement.version()));
        LockedCases act = door.within(by.recordedBy()).lockAll(versions, groups.others(wanted.keySet()));
        SortedMap<EnvelopeKey, AssessmentService.AssessedCase> assessed = assessments.assess(wanted.keySet());
        ElectionId electionId = wanted.firstKey().electionId();
        List<EnvelopeNumber> numbers =
                wanted.keySet().stream().map(EnvelopeKey::envelopeNo).toList();
        return act.refuseAll(() -> refusals(wanted, act.seen(), assessed, by))
                .save(seen -> write(wanted, seen, assessed, by))
                .assessAnew()
                .record("decided", () -> entries.of(electionId, numbers));
    }

    private List<Refusal> refusals(
            SortedMap<EnvelopeKey, Settlement> wanted,
            SortedMap<EnvelopeKey, EnvelopeCase> locked,
            Map<EnvelopeKey, AssessmentService.AssessedCase> assessed,
            DecidedBy by) {
        List<Refusal> refusals = new ArrayList<>();
        Set<String> counted = new LinkedHashSet<>();
        SettlementChecks.Judging judging = checks.judging(wanted.firstKey().electionId(), wanted.keySet(), by);
        wanted.forEach((key, settlement) -> {
            EnvelopeCase envelopeCase = of(locked, key);
            SettlementChecks.refusals(
                            envelopeCase, settlement, of(assessed, key).report().settled(), judging, counted)
                    .forEach(refusal -> refusals.add(refusal.about(key.envelopeNo())));
            if (settlement.as() != DecisionOutcome.REJECT && envelopeCase.personId() != null) {
                counted.add(envelopeCase.personId());
            }
        });
        return refusals;
    }

    private static <T> T of(Map<EnvelopeKey, T> settled, EnvelopeKey key) {
        return Objects.requireNonNull(settled.get(key), "a case is locked and assessed before it is settled");
    }

    private List<EnvelopeCase> write(
            SortedMap<EnvelopeKey, Settlement> wanted,
            SortedMap<EnvelopeKey, EnvelopeCase> locked,
            SortedMap<EnvelopeKey, AssessmentService.AssessedCase> assessed,
            DecidedBy by) {
        Map<EnvelopeKey, Integer> numbers = assessments.write(assessed);
        List<DecisionStore.New> made = new ArrayList<>();
        List<EnvelopeCase> changed = new ArrayList<>();
        wanted.forEach((key, settlement) -> {
            AssessmentService.AssessedCase on = of(assessed, key);
            Set<String> contests =
                    SettlementChecks.contests(settlement, on.report().settled());
            made.add(new DecisionStore.New(settlement, contests, on.ballot(), of(numbers, key)));
            changed.add(of(locked, key).to(CaseState.DECIDED).counted(settlement.as() != DecisionOutcome.REJECT));
        });
        decisions.insert(wanted.firstKey().electionId(), made, by, by.kind().code());
        return cases.save(changed);
    }

    /** What a court ordered is not opened again here while its order binds; empty where no order says how it is settled. */
    @Transactional(readOnly = true)
    public Optional<Refusal> ordered(EnvelopeKey key) {
        return steps.ordered(key);
    }

    /** The envelopes were opened: nothing leads back. For the room of release, in its transaction. */
    @Transactional(propagation = Propagation.MANDATORY)
    public ActResult<List<EnvelopeCase>> recordRelease(Collection<EnvelopeKey> keys, Actor by) {
        if (keys.isEmpty()) {
            return ActResult.accepted(List.of());
        }
        LockedCases act = door.within(by).lockAll(keys);
        Map<EnvelopeNumber, Map<String, Object>> entries = new LinkedHashMap<>();
        act.seen().keySet().forEach(key -> entries.put(key.envelopeNo(), Map.of()));
        return act.refuseAll(() -> act.seen().values().stream()
                        .map(DecisionService::staysClosed)
                        .flatMap(Optional::stream)
                        .toList())
                .refuseAll(() -> contradicted(
                        act.seen().firstKey().electionId(), act.seen().keySet()))
                .save(seen -> cases.save(seen.values().stream()
                        .map(counted -> counted.to(CaseState.RELEASED))
                        .toList()))
                .record("released", () -> entries);
    }

    /** Seen with the cases held, so that a list put in use at the same moment is not missed. */
    private List<Refusal> contradicted(ElectionId electionId, Set<EnvelopeKey> opened) {
        return contradictions.open(electionId).stream()
                .filter(ContradictedDecision::counts)
                .filter(found -> found.mustStayClosed() && opened.contains(found.key()))
                .map(found -> Refusal.of(
                                Why.CONTRADICTED, "A newer record contradicts the decision: " + found.saysNow() + ".")
                        .about(found.key().envelopeNo()))
                .toList();
    }

    private static Optional<Refusal> staysClosed(EnvelopeCase found) {
        return CaseGraph.refusal(found.state(), CaseAct.RELEASE)
                .or(() -> Refusal.when(
                        found.countedPerson() == null, Why.NOT_IN_THIS_STATE, "This ballot does not count."))
                .map(refusal -> refusal.about(found.key().envelopeNo()));
    }
}
