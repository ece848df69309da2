package org.proviso.review.facts;

import org.proviso.core.Code;

/** Who has to answer before work on a case goes on. */
public enum WaitsFor implements Code {
    VOTER("the voter"),
    COLLEAGUE("a colleague"),
    ANOTHER_OFFICE("another office");

    private final String words;

    WaitsFor(String words) {
        this.words = words;
    }

    /** As it reads after "waiting for". */
    public String words() {
        return words;
    }
}
