package org.proviso.core.deciding;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.act.Refusal;
import org.proviso.core.rules.ResolvedRule;

/** What a vote comes to. */
public sealed interface VoteResult {

    /** The vote does not stand. */
    record Refused(Refusal refusal) implements VoteResult {}

    /**
     * The vote stands: how the motion ended, and how that settles these of the envelopes put ({@code decided} is null
     * where all stay open), in words and with the rules it rests on. {@code keptOpen} are those that it would have counted
     * although the voter is known to have voted.
     */
    record Stands(
            MotionResult end,
            @Nullable DecisionOutcome decided,
            Set<EnvelopeNumber> envelopes,
            Set<EnvelopeNumber> keptOpen,
            String words,
            List<ResolvedRule> restsOn)
            implements VoteResult {

        /** With what stays open nevertheless: for the record of the vote, never for the decision on another envelope. */
        public String recorded() {
            if (keptOpen.isEmpty()) {
                return words;
            }
            return keptOpen.size() == 1
                    ? words + " " + Key.join(", ", keptOpen) + " stays open, because records show that the voter voted."
                            + " It counts only if a motion to count carries."
                    : words + " These stay open, because records show that the voters voted: "
                            + Key.join(", ", keptOpen) + ". They count only if a motion to count carries.";
        }

        public boolean staysOpen() {
            return decided == null;
        }
    }
}
