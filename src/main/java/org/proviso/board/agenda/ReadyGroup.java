package org.proviso.board.agenda;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;

/**
 * Envelopes that wait for the decider and may be decided together, each in the version of its case: the same proposed
 * outcome and primary reason. One whose proposal departs from the recommendation stands alone.
 */
public record ReadyGroup(
        DecisionOutcome outcome,
        @Nullable Reason reason,
        boolean alone,
        Map<EnvelopeNumber, Integer> envelopes,
        List<String> references) {}
