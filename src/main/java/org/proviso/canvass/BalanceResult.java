package org.proviso.canvass;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** How one identity stands at one place: a voting location, or the county. */
public sealed interface BalanceResult {

    CanvassPlace where();

    /** The place as it reads in a sentence. */
    default String place() {
        return where().words();
    }

    BalanceRule identity();

    /** What it says, as a plain sentence. */
    String words();

    record Holds(CanvassPlace where, BalanceRule identity, String words) implements BalanceResult {}

    /** Off by so many, never zero; positive where the whole is more than its parts. */
    record Differs(CanvassPlace where, BalanceRule identity, int by, String words) implements BalanceResult {}

    /** Some figures are not noted. */
    record CannotBeChecked(CanvassPlace where, BalanceRule identity, List<Figure> missing, String words)
            implements BalanceResult {}

    /**
     * It does not agree, and two people signed why. {@code by} is null where it cannot be checked; the county's has the
     * explanations of its voting locations.
     */
    record Explained(
            CanvassPlace where,
            BalanceRule identity,
            @Nullable Integer by,
            String words,
            List<BalanceExplanation> explanations)
            implements BalanceResult {}

    /** Whether it is off by this number; null: whether it cannot be checked. */
    default boolean isOffBy(@Nullable Integer difference) {
        return difference == null
                ? this instanceof CannotBeChecked
                : this instanceof Differs differs && differs.by() == difference;
    }

    /** Whether it stands in nobody's way: it agrees, or it is explained. */
    default boolean isSettled() {
        return this instanceof Holds || this instanceof Explained;
    }
}
