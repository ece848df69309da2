package org.proviso.cli.sample;

/** What becomes of an envelope, as the truth file spells it. */
enum Outcome {
    COUNT("count"),
    PART("count in part"),
    REJECT("reject"),
    SENT_ON("sent on"),
    WAIT("wait for the voter"),
    END("administrative end");

    final String word;

    Outcome(String word) {
        this.word = word;
    }
}
