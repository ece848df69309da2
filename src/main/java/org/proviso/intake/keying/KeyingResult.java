package org.proviso.intake.keying;

import java.util.List;

/** What came of handing in what an envelope says. */
public sealed interface KeyingResult {

    /** It stands; {@code changed} says whether the envelope now reads otherwise than before. */
    record Keyed(boolean changed) implements KeyingResult {}

    /**
     * It was keyed before and reads otherwise in these boxes; nothing was changed. To settle it, look at the paper
     * again and hand in once more with this version.
     */
    record KeyedTwice(List<BoxDifference> differences, int version) implements KeyingResult {}
}
