package org.proviso.review.decide;

import java.util.List;
import java.util.Map;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.Refusal;
import org.proviso.review.EnvelopeCase;

/** What became of settling several cases together: all were, or none. */
public sealed interface SettlementResult {

    /** Every case is decided; as they are now. */
    record All(List<EnvelopeCase> now) implements SettlementResult {}

    /** Nothing was written: what stands in the way, by envelope. */
    record None(Map<EnvelopeKey, List<Refusal>> refusals) implements SettlementResult {}
}
