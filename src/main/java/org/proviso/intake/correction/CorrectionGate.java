package org.proviso.intake.correction;

import java.util.Optional;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.Refusal;

/**
 * What the room of cases says before an envelope is corrected. That room comes later than this one, so it takes this part
 * in the act, inside its transaction, instead of being called by its name.
 */
public interface CorrectionGate {

    /** Holds the case, and those of the same voter, so that nobody settles it meanwhile. */
    void hold(EnvelopeKey key);

    /** Why the envelope cannot be corrected as its case stands, and what comes first. */
    Optional<Refusal> refusal(EnvelopeKey key);
}
