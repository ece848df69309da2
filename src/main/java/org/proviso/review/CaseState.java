package org.proviso.review;

import org.proviso.core.Code;

/** Where the case of one envelope stands. */
public enum CaseState implements Code {
    RECEIVED("the envelope is here; its affirmation is not keyed yet"),
    OPEN("waits for a reviewer"),
    IN_REVIEW("a reviewer has it"),
    PROPOSED("waits for a second reader"),
    READY("waits for the decider"),
    DECIDED("count, count in part or reject was decided"),
    SENT_ON("handed to the voter's home county; not decided here"),
    ENDED("there is no vote to decide"),
    RELEASED("the envelope was opened; nothing leads back");

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
