package org.proviso.review;

import org.proviso.core.Code;

/** Where the case of one envelope stands. */
public enum CaseState implements Code {
    RECEIVED("envelope received; affirmation not keyed yet"),
    OPEN("waiting for a reviewer"),
    IN_REVIEW("assigned to a reviewer"),
    PROPOSED("waiting for second review"),
    READY("waiting for the decider"),
    DECIDED("decided: count, count in part or reject"),
    SENT_ON("sent on to the voter's home county; not decided here"),
    ENDED("there is no vote to decide"),
    RELEASED("envelope opened; this cannot be undone");

    private final String words;

    CaseState(String words) {
        this.words = words;
    }

    /** What it means to the office. */
    public String words() {
        return words;
    }

    /** Whether people have settled it, or nothing is left to settle: what comes from outside changes it no more. */
    public boolean isOver() {
        return this == DECIDED || this == SENT_ON || this == ENDED || this == RELEASED;
    }

    /** As it is said in a sentence: {@code in review}. */
    public String spoken() {
        return code().replace('_', ' ');
    }
}
