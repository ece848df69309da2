package org.proviso.review.decide;

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
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.ledger.Actor;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseActResult;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseGraph;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;
import org.proviso.review.CaseTransition;
import org.proviso.review.DecidedBy;
import org.proviso.review.DecidedCase;
import org.proviso.review.Decision;
import org.proviso.review.DecisionStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.Proposal;
import org.proviso.review.ProposalStore;
import org.proviso.review.Settlement;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.facts.VoterGroups;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * The only door through which a decider changes a case. Whoever calls has recorded the vote in the same transaction:
 * the decision takes effect with it.
 */
@Service
public class DecisionService {

    private final CaseActSteps desk;
    private final CaseStore cases;
    private final DecisionStore decisions;
    private final ProposalStore proposals;
    private final SettlementChecks checks;
    private final DecisionLedgerEntry entries;
    private final VoterGroups groups;
    private final AssessmentService assessments;
    private final AccessService access;

    DecisionService(
            CaseActSteps desk,
            CaseStore cases,
            DecisionStore decisions,
            ProposalStore proposals,
            SettlementChecks checks,
            DecisionLedgerEntry entries,
            VoterGroups groups,
            AssessmentService assessments,
            AccessService access) {
        this.desk = desk;
        this.cases = cases;
        this.decisions = decisions;
        this.proposals = proposals;
        this.checks = checks;
        this.entries = entries;
        this.groups = groups;
        this.assessments = assessments;
        this.access = access;
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

    /** Decisions that stand, the newest first, a page of them; for whoever may see whole cases. */
    @Transactional(readOnly = true)
    public List<DecidedCase> standing(ElectionId electionId, int offset, int limit) {
        access.demand(Permission.SEE_WHOLE_CASE);
        return decisions.standing(electionId, offset, limit);
    }

    /** How many decisions of each kind stand. */
    @Transactional(readOnly = true)
    public Map<DecisionOutcome, Integer> counts(ElectionId electionId) {
        access.demand(Permission.READ_FIGURES);
        return decisions.counts(electionId);
    }

    /**
     * Locks the cases that will be settled, with the other envelopes of their voters. For whoever records anything before
     * it settles them in the same transaction: the head of the chain is locked last.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void hold(Collection<EnvelopeKey> keys) {
        SortedSet<EnvelopeKey> together = new TreeSet<>(keys);
        together.addAll(groups.others(keys));
        together.forEach(desk::lock);
    }

    /** Settles cases of one election together, all or none, each judged by what the rules say of it at this moment. */
    @Transactional(propagation = Propagation.MANDATORY)
    public SettlementResult settle(Collection<Settlement> settlements, DecidedBy by) {
        if (settlements.isEmpty()) {
            return new SettlementResult.All(List.of());
        }
        SortedMap<EnvelopeKey, Settlement> wanted = new TreeMap<>();
        settlements.forEach(one -> wanted.put(one.key(), one));
        SortedSet<EnvelopeKey> touched = groups.others(wanted.keySet());
        SortedMap<EnvelopeKey, EnvelopeCase> locked = lock(wanted, touched);
        SortedMap<EnvelopeKey, AssessmentService.AssessedCase> assessed = assessments.assess(wanted.keySet());
        Map<EnvelopeKey, List<Refusal>> refusals = refusals(wanted, locked, assessed, by);
        if (!refusals.isEmpty()) {
            return new SettlementResult.None(refusals);
        }
        List<EnvelopeCase> now = write(wanted, locked, assessed, by);
        touched.addAll(wanted.keySet());
        SortedMap<EnvelopeKey, CaseReport> reports = assessments.renew(touched);
        ElectionId electionId = wanted.firstKey().electionId();
        List<EnvelopeNumber> numbers =
                wanted.keySet().stream().map(EnvelopeKey::envelopeNo).toList();
        desk.record(electionId, by.recordedBy(), "decided", entries.of(electionId, numbers));
        assessments.announce(reports);
        return new SettlementResult.All(now);
    }

    private SortedMap<EnvelopeKey, EnvelopeCase> lock(
            SortedMap<EnvelopeKey, Settlement> wanted, SortedSet<EnvelopeKey> touched) {
        SortedSet<EnvelopeKey> together = new TreeSet<>(touched);
        together.addAll(wanted.keySet());
        SortedMap<EnvelopeKey, EnvelopeCase> locked = new TreeMap<>();
        for (EnvelopeKey key : together) {
            Settlement one = wanted.get(key);
            locked.put(key, one == null ? desk.lock(key) : desk.lock(key, one.version()));
        }
        return locked;
    }

    private Map<EnvelopeKey, List<Refusal>> refusals(
            SortedMap<EnvelopeKey, Settlement> wanted,
            SortedMap<EnvelopeKey, EnvelopeCase> locked,
            Map<EnvelopeKey, AssessmentService.AssessedCase> assessed,
            DecidedBy by) {
        Map<EnvelopeKey, List<Refusal>> refusals = new LinkedHashMap<>();
        Set<String> counted = new LinkedHashSet<>();
        Optional<Refusal> closed = desk.closed(wanted.firstKey());
        SettlementChecks.Judging judging = checks.judging(wanted.firstKey().electionId(), wanted.keySet(), by);
        wanted.forEach((key, settlement) -> {
            EnvelopeCase one = of(locked, key);
            List<Refusal> against = closed.map(List::of)
                    .orElseGet(() -> SettlementChecks.refusals(
                            one, settlement, of(assessed, key).report().settled(), judging, counted));
            if (!against.isEmpty()) {
                refusals.put(key, against);
            }
            if (settlement.as() != DecisionOutcome.REJECT && one.personId() != null) {
                counted.add(one.personId());
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

    /** Opens a settled case again, with the reason, until the election is closed; the decision is set aside. */
    @Transactional
    public CaseActResult reopen(EnvelopeKey key, int version, String because) {
        OfficeUser user = access.demand(Permission.DECIDE);
        SortedSet<EnvelopeKey> others = groups.others(key);
        EnvelopeCase one = desk.lockWith(key, version, others);
        Optional<Refusal> refusal = desk.closed(key)
                .or(() -> ordered(key))
                .or(() -> reasonMissing(because, "Opening a case again needs a reason."))
                .or(() -> step(one, CaseAct.REOPEN));
        if (refusal.isPresent()) {
            return CaseActResult.Refused.because(refusal.get());
        }
        decisions.setAside(key, because);
        EnvelopeCase now = cases.save(one.to(CaseState.OPEN).counted(false));
        others.add(key);
        SortedMap<EnvelopeKey, CaseReport> reports = assessments.renew(others);
        desk.record(key, user.actor(), "reopened", Map.of("because", desk.hidden(key, because)));
        assessments.announce(reports);
        return new CaseActResult.Accepted(now);
    }

    /** What a court ordered is not opened again here while its order binds; empty where no order says how it is settled. */
    @Transactional(readOnly = true)
    public Optional<Refusal> ordered(EnvelopeKey key) {
        return desk.election(key.electionId()).orders().stream()
                .filter(order -> order.settles(key.envelopeNo()))
                .findFirst()
                .map(order -> Refusal.of(
                        Why.HELD_BY_COURT,
                        "The " + order.court() + " ordered how " + key.envelopeNo()
                                + " is settled: it is opened again only when that order is set aside."));
    }

    /** Sends a proposed case back to the reviewers with a note, undecided. */
    @Transactional
    public CaseActResult sendBack(EnvelopeKey key, int version, String note) {
        OfficeUser user = access.demand(Permission.PULL_OUT);
        EnvelopeCase one = desk.lock(key, version);
        Optional<Refusal> refusal = desk.closed(key)
                .or(() -> reasonMissing(note, "Sending a case back needs a note."))
                .or(() -> step(one, CaseAct.RETURN));
        if (refusal.isPresent()) {
            return CaseActResult.Refused.because(refusal.get());
        }
        proposals
                .newest(key)
                .filter(Proposal::stands)
                .ifPresent(standing -> proposals.end(standing, Proposal.State.RETURNED));
        EnvelopeCase now = cases.save(one.to(CaseState.OPEN));
        desk.record(key, user.actor(), "sent_back", Map.of("note", desk.hidden(key, note)));
        return new CaseActResult.Accepted(now);
    }

    /** The envelopes were opened: nothing leads back. For the room of release, in its transaction. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void recordRelease(Collection<EnvelopeKey> keys, Actor by) {
        SortedSet<EnvelopeKey> inOrder = new TreeSet<>(keys);
        List<EnvelopeCase> locked = inOrder.stream().map(desk::lock).toList();
        List<EnvelopeCase> opened = new ArrayList<>();
        Map<EnvelopeNumber, Map<String, Object>> entries = new LinkedHashMap<>();
        for (EnvelopeCase one : locked) {
            if (one.countedPerson() == null || step(one, CaseAct.RELEASE).isPresent()) {
                throw new IllegalArgumentException("The envelope " + one.key().envelopeNo() + " is not to be opened.");
            }
            opened.add(one.to(CaseState.RELEASED));
            entries.put(one.key().envelopeNo(), Map.of());
        }
        if (!opened.isEmpty()) {
            cases.save(opened);
            desk.record(inOrder.first().electionId(), by, "released", entries);
        }
    }

    private static Optional<Refusal> reasonMissing(String text, String words) {
        return text.isBlank() ? Optional.of(Refusal.of(Why.NO_REASON, words)) : Optional.empty();
    }

    private static Optional<Refusal> step(EnvelopeCase one, CaseAct act) {
        return CaseGraph.step(one.state(), act) instanceof CaseTransition.Refused refused
                ? Optional.of(refused.refusal())
                : Optional.empty();
    }
}
