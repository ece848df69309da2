package org.proviso.review.decide;

import java.util.Optional;
import org.proviso.access.OfficeUser;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.Refusal;

/**
 * What the room that opens envelopes says of a decided one, and does when its case is reopened. That room comes later than
 * this one, so it takes this part in the act, inside its transaction, instead of being called by its name.
 */
public interface EnvelopesInBatches {

    /** Why the case cannot be reopened now: its batch is being opened. */
    Optional<Refusal> beingOpened(EnvelopeKey key);

    /** The case was reopened: its envelope leaves its batch, if it is in one. */
    void reopened(EnvelopeKey key, OfficeUser by, String because);
}
