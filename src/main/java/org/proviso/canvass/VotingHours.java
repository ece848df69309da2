package org.proviso.canvass;

import org.proviso.core.Code;

/** Ballots of hours that a court extended are accounted for apart from all the others. */
public enum VotingHours implements Code {
    REGULAR(""),
    EXTENDED(" in extended hours");

    private final String words;

    VotingHours(String words) {
        this.words = words;
    }

    /** What follows the name of a place in a sentence. */
    String words() {
        return words;
    }
}
