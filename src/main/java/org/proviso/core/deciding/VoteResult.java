package org.proviso.core.deciding;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.Refusal;
import org.proviso.core.rules.ResolvedRule;

/** What a vote comes to. */
public sealed interface VoteResult {

    /** The vote does not stand. */
    record Refused(Refusal refusal) implements VoteResult {}

    /**
     * The vote stands: how the motion ended, and how that settles these of the envelopes put ({@code decided} is null
     * where all stay open), in words and with the rules it rests on.
     */
    record Stands(
            MotionResult end,
            @Nullable DecisionOutcome decided,
            Set<EnvelopeNumber> envelopes,
            String words,
            List<ResolvedRule> restsOn)
            implements VoteResult {

        public boolean staysOpen() {
            return decided == null;
        }
    }
}
