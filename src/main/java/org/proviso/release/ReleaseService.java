package org.proviso.release;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.Sha256;
import org.proviso.election.OtherBallots;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.proviso.review.decide.DecisionService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.interceptor.TransactionAspectSupport;

/**
 * Opening the envelopes that count. They are put together in batches, opened by two, and what comes out is known by
 * numbers only: which ballot came from which envelope is recorded nowhere.
 */
@Service
public class ReleaseService {

    private final BatchStore batches;
    private final RemakeSheetStore sheets;
    private final ReleaseChecks checks;
    private final EnvelopesToOpen waiting;
    private final BatchPeople people;
    private final OtherBallots others;
    private final DecisionService decisions;
    private final AccessService access;
    private final ActDoor door;

    ReleaseService(
            BatchStore batches,
            RemakeSheetStore sheets,
            ReleaseChecks checks,
            EnvelopesToOpen waiting,
            BatchPeople people,
            OtherBallots others,
            DecisionService decisions,
            AccessService access,
            ActDoor door) {
        this.batches = batches;
        this.sheets = sheets;
        this.checks = checks;
        this.waiting = waiting;
        this.people = people;
        this.others = others;
        this.decisions = decisions;
        this.access = access;
        this.door = door;
    }

    /** A supervisor's word that all mail and in-person ballots are done, where the law opens provisional ones last. */
    @Transactional
    public ActResult<ElectionId> recordOtherBallotsComplete(ElectionId electionId) {
        return door.demand(Permission.SET_GATES)
                .lockNothing()
                .refuse(user -> checks.closed(electionId))
                .refuse(user -> Refusal.when(
                        others.areCounted(electionId),
                        Why.NOTHING_NEW,
                        "It is recorded already that mail and in-person counting is complete."))
                .save(user -> {
                    others.markCounted(electionId, user.userName());
                    return electionId;
                })
                .record(done -> line(electionId, "others_done", electionId.value(), Map.of()));
    }

    /** Takes back that word, given too early, with the reason: until the first batch is begun to open. */
    @Transactional
    public ActResult<ElectionId> takeBackOtherBallotsComplete(ElectionId electionId, String because) {
        ActDoor.Permitted supervisor = door.demand(Permission.SET_GATES);
        return supervisor
                .lock(() -> {
                    others.hold(electionId);
                    return electionId;
                })
                .refuse(checks::closed)
                .refuse(id -> ReleaseChecks.reason(because))
                .refuse(id -> Refusal.when(
                        !others.areCounted(id),
                        Why.NOTHING_NEW,
                        "It is not recorded that mail and in-person counting is complete."))
                .refuse(id -> ReleaseChecks.noneBegun(batches.all(id)))
                .save(id -> {
                    others.takeBack(id, supervisor.user().userName(), because.strip());
                    return id;
                })
                .record(id ->
                        line(id, "others_done_taken_back", id.value(), Map.of("because", Sha256.of(because.strip()))));
    }

    /** Why nothing may be opened now, and until when; empty where opening may begin. */
    @Transactional(readOnly = true)
    public Optional<Refusal> gate(ElectionId electionId) {
        access.demand(Permission.SEE_RELEASE);
        return checks.gate(electionId);
    }

    /** Whether a supervisor gave the word that mail and in-person ballots are done. */
    @Transactional(readOnly = true)
    public boolean areOtherBallotsComplete(ElectionId electionId) {
        access.demand(Permission.SEE_RELEASE);
        return others.areCounted(electionId);
    }

    /** One batch; {@link IllegalArgumentException} where there is none. */
    @Transactional(readOnly = true)
    public Batch batch(ElectionId electionId, int batchNo) {
        access.demand(Permission.SEE_RELEASE);
        return batches.known(electionId, batchNo);
    }

    /** The full names of those who opened a batch and remade its sheets; whoever has no account is left out. */
    @Transactional(readOnly = true)
    public Map<UserName, String> names(ElectionId electionId, int batchNo) {
        access.demand(Permission.SEE_RELEASE);
        return people.of(electionId, batchNo);
    }

    /** Envelopes decided to count that must stay closed for now, each with whose word it takes, by envelope number. */
    @Transactional(readOnly = true)
    public List<KeptClosed> keptClosed(ElectionId electionId) {
        access.demand(Permission.SEE_RELEASE);
        return waiting.keptClosed(electionId);
    }

    /** Envelopes decided to count that no batch has yet, by envelope number. */
    @Transactional(readOnly = true)
    public List<EnvelopeToOpen> waiting(ElectionId electionId) {
        access.demand(Permission.SEE_RELEASE);
        return waiting.of(electionId);
    }

    @Transactional(readOnly = true)
    public List<Batch> batches(ElectionId electionId) {
        access.demand(Permission.SEE_RELEASE);
        return batches.all(electionId);
    }

    /** A batch that was made, and how many sheets it has to remake. */
    private record Made(Batch batch, int sheets) {}

    /** Puts envelopes together, those of court-extended hours never with others, and lists what is to be remade. */
    @Transactional
    public ActResult<Batch> makeBatch(ElectionId electionId, Set<EnvelopeNumber> envelopeNos, String aloneBecause) {
        return door.demand(Permission.OPEN_ENVELOPES)
                .lock(() -> waiting(electionId, envelopeNos))
                .refuse(found -> checks.gate(electionId))
                .refuse(found -> ReleaseChecks.waiting(envelopeNos, found.keySet()))
                .refuse(found -> ReleaseChecks.oneKind(found.values()))
                .refuse(found -> ReleaseChecks.alone(found.keySet(), aloneBecause))
                .save(found -> insert(electionId, found.values(), aloneBecause))
                .record(made ->
                        line(electionId, "batch_made", subject(made.batch().number()), payload(made)))
                .map(Made::batch);
    }

    private Map<EnvelopeNumber, EnvelopeToOpen> waiting(ElectionId electionId, Set<EnvelopeNumber> envelopeNos) {
        Map<EnvelopeNumber, EnvelopeToOpen> found = new TreeMap<>();
        waiting.of(electionId).stream()
                .filter(envelope -> envelopeNos.contains(envelope.key().envelopeNo()))
                .forEach(envelope -> found.put(envelope.key().envelopeNo(), envelope));
        return found;
    }

    private Made insert(ElectionId electionId, Collection<EnvelopeToOpen> envelopes, String aloneBecause) {
        boolean apart = envelopes.iterator().next().decision().ballot().heldApart();
        List<EnvelopeNumber> numbers =
                envelopes.stream().map(envelope -> envelope.key().envelopeNo()).toList();
        int batchNo = batches.insert(electionId, apart, numbers, aloneBecause);
        List<RemakeSheet> made = RemakeSheetBuilder.of(electionId, batchNo, envelopes);
        made.forEach(sheets::insert);
        return new Made(batches.known(electionId, batchNo), made.size());
    }

    private static Map<String, Object> payload(Made made) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("envelopes", made.batch().envelopes());
        payload.put("held_apart", made.batch().heldApart());
        payload.put("sheets", made.sheets());
        return payload;
    }

    /** The first of two begins to open a batch. */
    @Transactional
    public ActResult<Batch> beginOpening(ElectionId electionId, int batchNo, int version) {
        ActDoor.Permitted first = door.demand(Permission.OPEN_ENVELOPES);
        return first.lock(() -> {
                    others.hold(electionId);
                    return batches.known(electionId, batchNo).at(version);
                })
                .refuse(batch -> checks.gate(electionId))
                .refuse(ReleaseChecks::sealed)
                .refuse(ReleaseChecks::leftAlone)
                .refuseAll(waiting::stopped)
                .save(batch -> {
                    batches.beginOpening(batch, first.user().userName());
                    return batches.known(electionId, batchNo);
                })
                .record(batch -> line(electionId, "opening_begun", subject(batchNo), Map.of()));
    }

    /** The second of two says that it is open, and how many envelopes were empty. */
    @Transactional
    public ActResult<Batch> recordOpening(ElectionId electionId, int batchNo, int version, int empty) {
        ActDoor.Permitted second = door.demand(Permission.OPEN_ENVELOPES);
        return second.lock(() -> batches.known(electionId, batchNo).at(version))
                .refuse(ReleaseChecks::beingOpened)
                .notBy(batch -> userNames(batch.firstOpener()))
                .refuse(batch -> ReleaseChecks.possible(batch, empty))
                .refuseAll(waiting::stopped)
                .saveOrRefuse(batch -> opened(batch, second.user(), empty))
                .record(batch -> line(
                        electionId,
                        "batch_opened",
                        subject(batchNo),
                        Map.of("empty", empty, "envelopes", batch.envelopes())));
    }

    /** The batch first, so that of two who open it one is told that it is stale; without its cases it is not open. */
    private ActResult<Batch> opened(Batch batch, OfficeUser second, int empty) {
        List<EnvelopeKey> keys = batches.envelopes(batch.electionId(), batch.number()).stream()
                .map(number -> new EnvelopeKey(batch.electionId(), number))
                .toList();
        batches.opened(batch, second.userName(), empty);
        ActResult<Batch> opened = decisions
                .recordRelease(keys, second.actor())
                .map(released -> batches.known(batch.electionId(), batch.number()));
        if (opened.isRefused()) {
            TransactionAspectSupport.currentTransactionStatus().setRollbackOnly();
        }
        return opened;
    }

    static List<UserName> userNames(@Nullable UserName first) {
        return first == null ? List.of() : List.of(first);
    }

    static String subject(int batchNo) {
        return "batch " + batchNo;
    }

    static LedgerLine line(ElectionId electionId, String act, String subject, Map<String, Object> payload) {
        return LedgerLine.of(LedgerChain.of(electionId), act, subject, payload);
    }
}
