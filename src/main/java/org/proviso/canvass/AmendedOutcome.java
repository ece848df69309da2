package org.proviso.canvass;

import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.deciding.DecisionOutcome;

/** An envelope that an amended canvass settles another way than the closing before; null where it was not decided. */
public record AmendedOutcome(
        EnvelopeNumber envelopeNo,
        @Nullable DecisionOutcome before,
        @Nullable DecisionOutcome after) {

    /** As it is said in a sentence: {@code P-1001: reject (before: count)}. */
    public String words() {
        return envelopeNo + ": " + words(after) + " (before: " + words(before) + ")";
    }

    private static String words(@Nullable DecisionOutcome outcome) {
        return outcome == null ? "not decided" : outcome.words();
    }
}
