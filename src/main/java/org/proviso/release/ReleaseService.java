package org.proviso.release;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;
import org.proviso.review.Decision;
import org.proviso.review.decide.DecisionService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Opening the envelopes that count. They are put together in batches, opened by two, and what comes out is known by
 * numbers only: which ballot came from which envelope is recorded nowhere.
 */
@Service
public class ReleaseService {

    private final BatchStore batches;
    private final RemakeSheetStore sheets;
    private final ReleaseChecks checks;
    private final DecisionService decisions;
    private final CaseService cases;
    private final AccessService access;
    private final LedgerService ledger;

    ReleaseService(
            BatchStore batches,
            RemakeSheetStore sheets,
            ReleaseChecks checks,
            DecisionService decisions,
            CaseService cases,
            AccessService access,
            LedgerService ledger) {
        this.batches = batches;
        this.sheets = sheets;
        this.checks = checks;
        this.decisions = decisions;
        this.cases = cases;
        this.access = access;
        this.ledger = ledger;
    }

    /** A supervisor's word that all mail and in-person ballots are done, where the law opens provisional ones last. */
    @Transactional
    public void recordOtherBallotsComplete(ElectionId electionId) {
        OfficeUser user = access.demand(Permission.SET_GATES);
        batches.markOthersDone(electionId, user.userName());
        ledger.record(LedgerChain.of(electionId), user.actor(), "others_done", electionId.value(), Map.of());
    }

    /** Why nothing may be opened now, and until when; empty where opening may begin. */
    @Transactional(readOnly = true)
    public Optional<Refusal> gate(ElectionId electionId) {
        access.demand(Permission.READ_FIGURES);
        return checks.gate(electionId);
    }

    /** Whether a supervisor gave the word that mail and in-person ballots are done. */
    @Transactional(readOnly = true)
    public boolean areOtherBallotsComplete(ElectionId electionId) {
        access.demand(Permission.READ_FIGURES);
        return batches.othersDone(electionId);
    }

    /** One batch; {@link IllegalArgumentException} where there is none. */
    @Transactional(readOnly = true)
    public Batch batch(ElectionId electionId, int batchNo) {
        access.demand(Permission.READ_FIGURES);
        return batches.find(electionId, batchNo)
                .orElseThrow(() -> new IllegalArgumentException("There is no batch " + batchNo + "."));
    }

    /** Envelopes decided to count that no batch has yet, by envelope number. */
    @Transactional(readOnly = true)
    public List<EnvelopeToOpen> waiting(ElectionId electionId) {
        Map<EnvelopeNumber, Decision> decided = decisions.standing(electionId);
        Set<EnvelopeNumber> taken = batches.inBatches(electionId);
        taken.addAll(checks.keptClosed(electionId));
        return cases.inState(electionId, CaseState.DECIDED).stream()
                .filter(one ->
                        one.countedPerson() != null && !taken.contains(one.key().envelopeNo()))
                .map(one -> new EnvelopeToOpen(
                        one.key(),
                        Objects.requireNonNull(
                                decided.get(one.key().envelopeNo()), "a case that is decided has its decision")))
                .toList();
    }

    @Transactional(readOnly = true)
    public List<Batch> batches(ElectionId electionId) {
        return batches.all(electionId);
    }

    /** Puts envelopes together, those of court-extended hours never with others, and lists what is to be remade. */
    @Transactional
    public ReleaseActResult makeBatch(ElectionId electionId, Set<EnvelopeNumber> envelopeNos, String aloneBecause) {
        OfficeUser user = access.demand(Permission.OPEN_ENVELOPES);
        Map<EnvelopeNumber, EnvelopeToOpen> waiting = new TreeMap<>();
        waiting(electionId).stream()
                .filter(one -> envelopeNos.contains(one.key().envelopeNo()))
                .forEach(one -> waiting.put(one.key().envelopeNo(), one));
        Optional<Refusal> refusal = checks.gate(electionId)
                .or(() -> notWaiting(envelopeNos, waiting.keySet()))
                .or(() -> mixed(waiting.values()))
                .or(() -> checks.alone(waiting.keySet(), aloneBecause));
        if (refusal.isPresent()) {
            return new ReleaseActResult.Refused(refusal.get());
        }
        boolean apart = waiting.values().iterator().next().decision().ballot().heldApart();
        int number = batches.insert(electionId, apart, waiting.keySet(), aloneBecause);
        List<RemakeSheet> made = RemakeSheetBuilder.of(electionId, number, waiting.values());
        made.forEach(sheets::insert);
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("envelopes", waiting.size());
        payload.put("held_apart", apart);
        payload.put("sheets", made.size());
        ledger.record(LedgerChain.of(electionId), user.actor(), "batch_made", "batch " + number, payload);
        return done(electionId, number);
    }

    /** The first of two begins to open a batch. */
    @Transactional
    public ReleaseActResult beginOpening(ElectionId electionId, int batchNo, int version) {
        OfficeUser user = access.demand(Permission.OPEN_ENVELOPES);
        Batch batch = demand(electionId, batchNo, version);
        Optional<Refusal> refusal = checks.gate(electionId)
                .or(() -> batch.firstOpener() == null
                        ? Optional.empty()
                        : Optional.of(Refusal.of(Why.NOT_IN_THIS_STATE, "Somebody has begun to open this batch.")));
        if (refusal.isPresent()) {
            return new ReleaseActResult.Refused(refusal.get());
        }
        batches.beginOpening(batch, user.userName());
        ledger.record(LedgerChain.of(electionId), user.actor(), "opening_begun", "batch " + batchNo, Map.of());
        return done(electionId, batchNo);
    }

    /** The second of two says that it is open, and how many envelopes were empty. */
    @Transactional
    public ReleaseActResult recordOpening(ElectionId electionId, int batchNo, int version, int empty) {
        Batch batch = demand(electionId, batchNo, version);
        if (batch.firstOpener() == null || batch.openedAt() != null || empty < 0 || empty > batch.envelopes()) {
            return new ReleaseActResult.Refused(
                    Refusal.of(Why.NOT_IN_THIS_STATE, "This batch is not being opened, or the count is not possible."));
        }
        OfficeUser user = access.demandSomebodyElse(Permission.OPEN_ENVELOPES, List.of(batch.firstOpener()));
        List<EnvelopeKey> keys = new ArrayList<>();
        batches.envelopes(electionId, batchNo).forEach(number -> keys.add(new EnvelopeKey(electionId, number)));
        batches.opened(batch, user.userName(), empty);
        decisions.recordRelease(keys, user.actor());
        ledger.record(
                LedgerChain.of(electionId),
                user.actor(),
                "batch_opened",
                "batch " + batchNo,
                Map.of("empty", empty, "envelopes", batch.envelopes()));
        return done(electionId, batchNo);
    }

    private Batch demand(ElectionId electionId, int batchNo, int version) {
        Batch batch = batches.find(electionId, batchNo)
                .orElseThrow(() -> new IllegalArgumentException("There is no batch " + batchNo + "."));
        if (batch.version() != version) {
            throw new org.springframework.dao.OptimisticLockingFailureException("The batch was changed meanwhile.");
        }
        return batch;
    }

    private ReleaseActResult done(ElectionId electionId, int batchNo) {
        return new ReleaseActResult.Done(batches.find(electionId, batchNo).orElseThrow());
    }

    private static Optional<Refusal> notWaiting(Set<EnvelopeNumber> asked, Set<EnvelopeNumber> waiting) {
        List<EnvelopeNumber> strange = asked.stream()
                .filter(number -> !waiting.contains(number))
                .sorted()
                .toList();
        return strange.isEmpty() && !asked.isEmpty()
                ? Optional.empty()
                : Optional.of(Refusal.of(
                        Why.NOT_IN_THIS_STATE, "Not waiting to be opened: " + Key.join(", ", strange) + "."));
    }

    private static Optional<Refusal> mixed(java.util.Collection<EnvelopeToOpen> waiting) {
        long kinds = waiting.stream()
                .map(one -> one.decision().ballot().heldApart())
                .distinct()
                .count();
        return kinds > 1
                ? Optional.of(Refusal.of(
                        Why.SECRECY, "Ballots of court-extended hours are kept apart: make them a batch of their own."))
                : Optional.empty();
    }
}
