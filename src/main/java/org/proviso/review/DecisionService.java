package org.proviso.review;

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
import org.proviso.access.Act;
import org.proviso.access.OfficeUser;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.deciding.DecidedAs;
import org.proviso.core.deciding.Refusal;
import org.proviso.core.deciding.Refusal.Why;
import org.proviso.ledger.Actor;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * The only door through which a decider changes a case. Whoever calls has recorded the vote in the same transaction:
 * the decision takes effect with it.
 */
@Service
public class DecisionService {

    private final CaseDesk desk;
    private final CaseStore cases;
    private final DecisionStore decisions;
    private final ProposalStore proposals;
    private final SettlementChecks checks;
    private final DecisionEntry entries;
    private final Groups groups;
    private final AssessmentService assessments;
    private final AccessService access;

    DecisionService(
            CaseDesk desk,
            CaseStore cases,
            DecisionStore decisions,
            ProposalStore proposals,
            SettlementChecks checks,
            DecisionEntry entries,
            Groups groups,
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
    public Optional<Decision> standing(CaseKey key) {
        return decisions.standing(key);
    }

    /** Every decision that stands in an election, by envelope number. */
    @Transactional(readOnly = true)
    public Map<String, Decision> standing(String electionId) {
        return decisions.standing(electionId);
    }

    /** Decisions that stand, the newest first, a page of them; for whoever may see whole cases. */
    @Transactional(readOnly = true)
    public List<DecidedCase> standing(String electionId, int offset, int limit) {
        access.demand(Act.SEE_WHOLE_CASE);
        return decisions.standing(electionId, offset, limit);
    }

    /** How many decisions of each kind stand. */
    @Transactional(readOnly = true)
    public Map<DecidedAs, Integer> counts(String electionId) {
        access.demand(Act.READ_FIGURES);
        return decisions.counts(electionId);
    }

    /**
     * Locks the cases that will be settled, with the other envelopes of their voters. For whoever records anything before
     * it settles them in the same transaction: the head of the chain is locked last.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void hold(Collection<CaseKey> keys) {
        SortedSet<CaseKey> together = new TreeSet<>(keys);
        keys.forEach(key -> together.addAll(groups.others(key)));
        together.forEach(desk::lock);
    }

    /** Settles cases together, all or none, each judged by what the rules say of it at this moment. */
    @Transactional(propagation = Propagation.MANDATORY)
    public Settled settle(Collection<Settlement> settlements, DecidedBy by) {
        SortedMap<CaseKey, Settlement> wanted = new TreeMap<>();
        settlements.forEach(one -> wanted.put(one.key(), one));
        SortedSet<CaseKey> touched = new TreeSet<>();
        wanted.keySet().forEach(key -> touched.addAll(groups.others(key)));
        SortedMap<CaseKey, EnvelopeCase> locked = lock(wanted, touched);
        Map<CaseKey, AssessmentService.Assessed> assessed = new LinkedHashMap<>();
        wanted.keySet().forEach(key -> assessed.put(key, assessments.assess(key)));
        Map<CaseKey, List<Refusal>> refusals = refusals(wanted, locked, assessed, by);
        if (!refusals.isEmpty()) {
            return new Settled.None(refusals);
        }
        List<EnvelopeCase> now = new ArrayList<>();
        wanted.forEach((key, settlement) -> now.add(write(of(locked, key), settlement, of(assessed, key), by)));
        touched.addAll(wanted.keySet());
        SortedMap<CaseKey, CaseReport> reports = assessments.renew(touched);
        wanted.keySet()
                .forEach(key -> desk.record(
                        key,
                        by.recordedBy(),
                        "decided",
                        entries.of(key, decisions.standing(key).orElseThrow())));
        assessments.announce(reports);
        return new Settled.All(now);
    }

    private SortedMap<CaseKey, EnvelopeCase> lock(SortedMap<CaseKey, Settlement> wanted, SortedSet<CaseKey> touched) {
        SortedSet<CaseKey> together = new TreeSet<>(touched);
        together.addAll(wanted.keySet());
        SortedMap<CaseKey, EnvelopeCase> locked = new TreeMap<>();
        for (CaseKey key : together) {
            Settlement one = wanted.get(key);
            locked.put(key, one == null ? desk.lock(key) : desk.lock(key, one.version()));
        }
        return locked;
    }

    private Map<CaseKey, List<Refusal>> refusals(
            SortedMap<CaseKey, Settlement> wanted,
            SortedMap<CaseKey, EnvelopeCase> locked,
            Map<CaseKey, AssessmentService.Assessed> assessed,
            DecidedBy by) {
        Map<CaseKey, List<Refusal>> refusals = new LinkedHashMap<>();
        Set<String> counted = new LinkedHashSet<>();
        wanted.forEach((key, settlement) -> {
            EnvelopeCase one = of(locked, key);
            List<Refusal> against = desk.closed(key)
                    .map(List::of)
                    .orElseGet(() -> checks.of(
                            one,
                            settlement,
                            of(assessed, key).report().settled(),
                            by,
                            desk.book(key.electionId()),
                            desk.now(key.electionId()),
                            counted));
            if (!against.isEmpty()) {
                refusals.put(key, against);
            }
            if (settlement.as() != DecidedAs.REJECT && one.personId() != null) {
                counted.add(one.personId());
            }
        });
        return refusals;
    }

    private static <T> T of(Map<CaseKey, T> settled, CaseKey key) {
        return Objects.requireNonNull(settled.get(key), "a case is locked and assessed before it is settled");
    }

    private EnvelopeCase write(
            EnvelopeCase one, Settlement settlement, AssessmentService.Assessed assessed, DecidedBy by) {
        int number = assessments.write(one.key(), assessed);
        Set<String> contests =
                SettlementChecks.contests(settlement, assessed.report().settled());
        decisions.insert(
                settlement, contests, assessed.ballot(), number, by, by.kind().code());
        return cases.save(one.to(CaseState.DECIDED).counted(settlement.as() != DecidedAs.REJECT));
    }

    /** Opens a settled case again, with the reason, until the election is closed; the decision is set aside. */
    @Transactional
    public Outcome reopen(CaseKey key, int version, String because) {
        OfficeUser user = access.demand(Act.DECIDE);
        SortedSet<CaseKey> others = groups.others(key);
        EnvelopeCase one = desk.lockWith(key, version, others);
        Optional<Refusal> refusal = desk.closed(key)
                .or(() -> ordered(key))
                .or(() -> reasonMissing(because, "Opening a case again needs a reason."))
                .or(() -> step(one, CaseAct.REOPEN));
        if (refusal.isPresent()) {
            return Outcome.Refused.because(refusal.get());
        }
        decisions.setAside(key, because);
        EnvelopeCase now = cases.save(one.to(CaseState.OPEN).counted(false));
        others.add(key);
        SortedMap<CaseKey, CaseReport> reports = assessments.renew(others);
        desk.record(key, user.actor(), "reopened", Map.of("because", desk.hidden(key, because)));
        assessments.announce(reports);
        return new Outcome.Accepted(now);
    }

    /** What a court ordered is not opened again here while its order binds; empty where no order says how it is settled. */
    @Transactional(readOnly = true)
    public Optional<Refusal> ordered(CaseKey key) {
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
    public Outcome sendBack(CaseKey key, int version, String note) {
        OfficeUser user = access.demand(Act.PULL_OUT);
        EnvelopeCase one = desk.lock(key, version);
        Optional<Refusal> refusal = desk.closed(key)
                .or(() -> reasonMissing(note, "Sending a case back needs a note."))
                .or(() -> step(one, CaseAct.RETURN));
        if (refusal.isPresent()) {
            return Outcome.Refused.because(refusal.get());
        }
        proposals
                .newest(key)
                .filter(Proposal::stands)
                .ifPresent(standing -> proposals.end(standing, Proposal.State.RETURNED));
        EnvelopeCase now = cases.save(one.to(CaseState.OPEN));
        desk.record(key, user.actor(), "sent_back", Map.of("note", desk.hidden(key, note)));
        return new Outcome.Accepted(now);
    }

    /** The envelopes were opened: nothing leads back. For the room of release, in its transaction. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void released(Collection<CaseKey> keys, Actor by) {
        SortedSet<CaseKey> inOrder = new TreeSet<>(keys);
        List<EnvelopeCase> locked = inOrder.stream().map(desk::lock).toList();
        for (EnvelopeCase one : locked) {
            if (one.countedPerson() == null || step(one, CaseAct.RELEASE).isPresent()) {
                throw new IllegalArgumentException("The envelope " + one.key().envelopeNo() + " is not to be opened.");
            }
            cases.save(one.to(CaseState.RELEASED));
        }
        locked.forEach(one -> desk.record(one.key(), by, "released", Map.of()));
    }

    private static Optional<Refusal> reasonMissing(String text, String words) {
        return text.isBlank() ? Optional.of(Refusal.of(Why.NO_REASON, words)) : Optional.empty();
    }

    private static Optional<Refusal> step(EnvelopeCase one, CaseAct act) {
        return CaseGraph.step(one.state(), act) instanceof CaseStep.Refused refused
                ? Optional.of(refused.refusal())
                : Optional.empty();
    }
}
