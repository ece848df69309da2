package org.proviso.canvass;

import java.util.List;

/** How one identity stands at one place: a voting location, or the county. */
public sealed interface BalanceResult {

    /** The place as it reads in a sentence: {@code Mill Pond Library}, {@code The county in extended hours}. */
    String place();

    BalanceRule identity();

    /** What it says, as a plain sentence. */
    String words();

    record Holds(String place, BalanceRule identity, String words) implements BalanceResult {}

    /** Off by so many, never zero; positive where the whole is more than its parts. */
    record Differs(String place, BalanceRule identity, int by, String words) implements BalanceResult {}

    /** Some figures are not noted. */
    record CannotBeChecked(String place, BalanceRule identity, List<Figure> missing, String words)
            implements BalanceResult {}
}
