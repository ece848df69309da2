package org.proviso.canvass.steps;

import java.util.List;

/** How much of one kind of work is left before closing, with sentences or names that say which (empty where a page has them). */
public record ClosingLine(ClosingStep step, int number, List<String> which) {

    /** {@code 14 envelopes to key}. */
    public String words() {
        return number + " " + step.words(number);
    }
}
