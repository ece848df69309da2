package org.proviso.intake.cure;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.adjudication.judging.DueAsk;
import org.proviso.core.rules.Ask;

/**
 * What the case of an envelope says of what its voter brought. The room that assesses cases comes later than this one, so it
 * answers this instead of being called by its name.
 */
public interface CaseAfterCure {

    /** When the voter was first told that this is missing, local to the county; empty where no notice is logged. */
    Optional<LocalDateTime> told(EnvelopeKey key, Ask ask);

    /** What the voter may still bring. */
    List<DueAsk> owed(EnvelopeKey key);
}
