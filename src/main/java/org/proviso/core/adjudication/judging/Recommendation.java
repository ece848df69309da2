package org.proviso.core.adjudication.judging;

import org.proviso.core.Code;

/**
 * What the rules say of an envelope. Only the first three are about the vote; a recommendation is never a decision.
 */
public enum Recommendation implements Code {
    COUNT("count"),
    COUNT_IN_PART("count in part"),
    REJECT("reject"),
    RESEARCH("research"),
    WAIT_FOR_THE_VOTER("wait for the voter"),
    SENT_ON("sent on"),
    ADMINISTRATIVE_END("administrative end");

    private final String words;

    Recommendation(String words) {
        this.words = words;
    }

    /** As it is written everywhere: on screens, in files and in letters. */
    public String words() {
        return words;
    }

    /** Whether it says how the vote itself should end. */
    public boolean isDecided() {
        return this == COUNT || this == COUNT_IN_PART || this == REJECT;
    }
}
