package org.proviso.release;

import java.util.Optional;
import java.util.Set;
import org.proviso.access.ActDoor;
import org.proviso.access.OfficeUser;
import org.proviso.core.BetweenRooms;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.review.decide.EnvelopesInBatches;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** A case that is reopened leaves its sealed batch; one whose batch is being opened is not reopened before it left. */
@Service
@BetweenRooms
public class ReopenedInBatches implements EnvelopesInBatches {

    private final BatchStore batches;
    private final EnvelopeRemoval removal;
    private final ActDoor door;

    ReopenedInBatches(BatchStore batches, EnvelopeRemoval removal, ActDoor door) {
        this.batches = batches;
        this.removal = removal;
        this.door = door;
    }

    @Override
    @Transactional(propagation = Propagation.MANDATORY)
    public Optional<Refusal> beingOpened(EnvelopeKey key) {
        return batches.closedWith(key)
                .filter(batch -> batch.firstOpener() != null)
                .map(batch -> Refusal.of(
                        Why.NOT_IN_THIS_STATE,
                        "Batch " + batch.number() + " is being opened, and " + key.envelopeNo()
                                + " is in it. Ask the release team to take it out of the batch first."));
    }

    @Override
    @Transactional(propagation = Propagation.MANDATORY)
    public void reopened(EnvelopeKey key, OfficeUser by, String because) {
        batches.closedWith(key).ifPresent(batch -> {
            Batch now = removal.without(batch, Set.of(key.envelopeNo()), by, because);
            door.record(by.actor(), removal.line(now, key.envelopeNo()));
        });
    }
}
