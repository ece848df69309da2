package org.proviso.canvass;

import java.util.List;

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
}
