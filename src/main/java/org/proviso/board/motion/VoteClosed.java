package org.proviso.board.motion;

import java.util.List;
import org.proviso.board.BoardMotion;
import org.proviso.review.EnvelopeCase;

/** What closing a vote came to. The vote is recorded in each case. */
public sealed interface VoteClosed {

    /** The motion as it ended. */
    BoardMotion motion();

    /**
     * The envelopes put were settled with it, or opened again: the cases as they are now. One whose voter is known to have
     * voted is not among them where the motion did not carry.
     */
    record Settled(BoardMotion motion, List<EnvelopeCase> now) implements VoteClosed {}

    /** The envelopes stay as they are. */
    record StaysOpen(BoardMotion motion) implements VoteClosed {}

    /** It was the vote of one of two bodies; nothing is settled before the other's on the same is. */
    record WaitsForOtherBody(BoardMotion motion) implements VoteClosed {}
}
