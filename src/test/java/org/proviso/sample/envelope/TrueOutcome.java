package org.proviso.sample.envelope;

/** What becomes of an envelope, as the truth file spells it. */
public enum TrueOutcome {
    COUNT("count"),
    PART("count in part"),
    REJECT("reject"),
    SENT_ON("sent on"),
    WAIT("wait for the voter"),
    END("administrative end");

    public final String word;

    TrueOutcome(String word) {
        this.word = word;
    }
}
