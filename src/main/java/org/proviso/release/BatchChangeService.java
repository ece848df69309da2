package org.proviso.release;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What happens to a batch before it is opened: one envelope that must stay closed is taken out, or the whole batch is
 * dissolved by two. What left it can be put into a later batch.
 */
@Service
public class BatchChangeService {

    private final BatchStore batches;
    private final EnvelopeRemoval removal;
    private final EnvelopesToOpen waiting;
    private final ReleaseChecks checks;
    private final AccessService access;
    private final ActDoor door;

    BatchChangeService(
            BatchStore batches,
            EnvelopeRemoval removal,
            EnvelopesToOpen waiting,
            ReleaseChecks checks,
            AccessService access,
            ActDoor door) {
        this.batches = batches;
        this.removal = removal;
        this.waiting = waiting;
        this.checks = checks;
        this.access = access;
        this.door = door;
    }

    /** Why envelopes of a batch that is not open must stay closed; empty where all may be opened. */
    @Transactional(readOnly = true)
    public List<Refusal> stopped(ElectionId electionId, int batchNo) {
        access.demand(Permission.SEE_RELEASE);
        Batch batch = batches.known(electionId, batchNo);
        return batch.isClosed() ? waiting.stopped(batch) : List.of();
    }

    /** Takes one envelope out of a batch that is not open yet, with the reason. */
    @Transactional
    public ActResult<Batch> takeOut(
            ElectionId electionId, int batchNo, int version, EnvelopeNumber envelopeNo, String because) {
        ActDoor.Permitted permitted = door.demand(Permission.OPEN_ENVELOPES);
        return permitted
                .lock(() -> batches.known(electionId, batchNo).at(version))
                .refuse(batch -> checks.closed(electionId))
                .refuse(ReleaseChecks::stillClosed)
                .refuse(batch -> notIn(batch, envelopeNo))
                .refuse(batch -> ReleaseChecks.reason(because))
                .save(batch -> removal.without(batch, Set.of(envelopeNo), permitted.user(), because))
                .record(batch -> removal.line(batch, envelopeNo));
    }

    private Optional<Refusal> notIn(Batch batch, EnvelopeNumber envelopeNo) {
        return batches.envelopes(batch.electionId(), batch.number()).contains(envelopeNo)
                ? Optional.empty()
                : Optional.of(Refusal.at(
                        "envelopeNo",
                        Why.NO_SUCH_ENVELOPE,
                        "Batch " + batch.number() + " has no envelope " + envelopeNo + "."));
    }

    /** The first of two asks that a batch be dissolved, with the reason. */
    @Transactional
    public ActResult<Batch> askToDissolve(ElectionId electionId, int batchNo, int version, String because) {
        ActDoor.Permitted permitted = door.demand(Permission.OPEN_ENVELOPES);
        return permitted
                .lock(() -> batches.known(electionId, batchNo).at(version))
                .refuse(batch -> checks.closed(electionId))
                .refuse(ReleaseChecks::stillClosed)
                .refuse(ReleaseChecks::askedAlready)
                .refuse(batch -> ReleaseChecks.reason(because))
                .save(batch -> {
                    batches.askToDissolve(batch, permitted.user().userName(), because);
                    return batches.known(electionId, batchNo);
                })
                .record(batch ->
                        ReleaseService.line(electionId, "dissolving_asked", ReleaseService.subject(batchNo), Map.of()));
    }

    /** The batch stays as it is: whoever asked takes it back, or another team member does not agree. */
    @Transactional
    public ActResult<Batch> keep(ElectionId electionId, int batchNo, int version) {
        return door.demand(Permission.OPEN_ENVELOPES)
                .lock(() -> batches.known(electionId, batchNo).at(version))
                .refuse(batch -> checks.closed(electionId))
                .refuse(ReleaseChecks::stillClosed)
                .refuse(ReleaseChecks::notAsked)
                .save(batch -> {
                    batches.keep(batch);
                    return batches.known(electionId, batchNo);
                })
                .record(batch ->
                        ReleaseService.line(electionId, "batch_kept", ReleaseService.subject(batchNo), Map.of()));
    }

    /** The second of two dissolves a batch: its envelopes wait to be opened again, as far as they still count. */
    @Transactional
    public ActResult<Batch> dissolve(ElectionId electionId, int batchNo, int version) {
        ActDoor.Permitted second = door.demand(Permission.OPEN_ENVELOPES);
        return second.lock(() -> batches.known(electionId, batchNo).at(version))
                .refuse(batch -> checks.closed(electionId))
                .refuse(ReleaseChecks::stillClosed)
                .refuse(ReleaseChecks::notAsked)
                .notBy(batch -> ReleaseService.userNames(batch.dissolveAskedBy()))
                .save(batch -> {
                    Set<EnvelopeNumber> all = Set.copyOf(batches.envelopes(electionId, batchNo));
                    Batch empty = removal.without(batch, all, second.user(), batch.dissolveBecause());
                    batches.dissolved(empty, second.user().userName());
                    return batches.known(electionId, batchNo);
                })
                .record(batch ->
                        ReleaseService.line(electionId, "batch_dissolved", ReleaseService.subject(batchNo), Map.of()));
    }
}
