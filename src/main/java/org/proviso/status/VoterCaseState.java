package org.proviso.status;

import org.proviso.core.Code;

/** Where a voter's own envelope stands, as the voter may know it. Nothing is told of how it may end before it has. */
public enum VoterCaseState implements Code {
    RECEIVED("We have your envelope."),
    UNDER_REVIEW("We are looking at your envelope."),
    WAITS_FOR_YOU("We need something from you."),
    COUNTED("Your ballot was counted."),
    COUNTED_IN_PART("Part of your ballot was counted."),
    REJECTED("Your ballot was not counted."),
    SENT_ON("We sent your envelope to your home county."),
    NOT_VOTED("There was no provisional ballot to count.");

    private final String words;

    VoterCaseState(String words) {
        this.words = words;
    }

    /** Whether it is still to be decided. */
    public boolean isOpen() {
        return switch (this) {
            case RECEIVED, UNDER_REVIEW, WAITS_FOR_YOU -> true;
            case COUNTED, COUNTED_IN_PART, REJECTED, SENT_ON, NOT_VOTED -> false;
        };
    }

    /** As the voter reads it. */
    public String words() {
        return words;
    }
}
