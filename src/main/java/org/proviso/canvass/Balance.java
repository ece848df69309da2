package org.proviso.canvass;

import java.util.List;

/** How one identity stands at one place: a voting location, or the county. */
public sealed interface Balance {

    /** The place as it reads in a sentence: {@code Mill Pond Library}, {@code The county in extended hours}. */
    String place();

    Identity identity();

    /** What it says, as a plain sentence. */
    String words();

    record Holds(String place, Identity identity, String words) implements Balance {}

    /** Off by so many, never zero; positive where the whole is more than its parts. */
    record Differs(String place, Identity identity, int by, String words) implements Balance {}

    /** Some figures are not noted. */
    record CannotBeChecked(String place, Identity identity, List<Figure> missing, String words) implements Balance {}
}
