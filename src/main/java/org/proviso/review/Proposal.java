package org.proviso.review;

import org.proviso.core.Code;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.Grounds;

/** What a reviewer proposed, on which assessment, and what became of the proposal. */
public record Proposal(
        EnvelopeKey key,
        int number,
        DecisionOutcome as,
        Grounds grounds,
        int assessment,
        UserName proposedBy,
        State state) {

    /** What became of it. */
    public enum State implements Code {
        STANDING,
        AGREED,
        RETURNED,
        WITHDRAWN
    }

    /** Whether it still waits for somebody. */
    public boolean stands() {
        return state == State.STANDING || state == State.AGREED;
    }
}
