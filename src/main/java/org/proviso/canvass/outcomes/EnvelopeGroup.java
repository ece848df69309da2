package org.proviso.canvass.outcomes;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Envelope;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseState;

/**
 * Envelopes that the figures cannot tell apart, and how many there are: where they were cast, whether the envelope says in
 * extended hours and whether it is kept apart so (as its decision says, where its ballot counts), the reasons for which they
 * were issued, whether a court holds them, the state of their cases (null where there is none), and the decision that stands
 * (null where none does) with its reasons.
 */
public record EnvelopeGroup(
        Envelope.Source source,
        String votingLocation,
        boolean castExtended,
        boolean extended,
        Set<String> issueReasons,
        boolean held,
        @Nullable CaseState state,
        @Nullable DecisionOutcome outcome,
        List<Reason> reasons,
        int number) {

    /** Whether a decision to reject stands that says why. */
    public boolean isRejectedForAReason() {
        return outcome == DecisionOutcome.REJECT && !reasons.isEmpty();
    }

    /** Whether there is a case and it is not over. */
    public boolean isUndecided() {
        return state != null && !state.isOver();
    }
}
