package org.proviso.board;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.review.CaseState;

/** What can be moved. */
public enum MotionKind implements Code {
    COUNT(DecisionOutcome.COUNT),
    COUNT_IN_PART(DecisionOutcome.COUNT_IN_PART),
    REJECT(DecisionOutcome.REJECT),
    /** To leave it for a later session. */
    TABLE(null),
    /** To open a decided envelope again. */
    REOPEN(null),
    /** To let a decision stand although a newer record contradicts it. */
    LET_STAND(null);

    private final @Nullable DecisionOutcome asks;

    MotionKind(@Nullable DecisionOutcome asks) {
        this.asks = asks;
    }

    /** How it would settle an envelope; empty where it settles none. */
    public Optional<DecisionOutcome> asks() {
        return Optional.ofNullable(asks);
    }

    /** As it is said in a sentence: {@code count in part}. */
    public String words() {
        if (asks != null) {
            return asks.words();
        }
        return this == LET_STAND ? "let the decision stand" : code();
    }

    /** The state that an envelope must be in. */
    public CaseState from() {
        return isOfDecided() ? CaseState.DECIDED : CaseState.READY;
    }

    /** Whether it is about an envelope that is decided already; such envelopes are moved one at a time. */
    public boolean isOfDecided() {
        return this == REOPEN || this == LET_STAND;
    }

    /** Whether it takes both of two bodies; each tables for itself. */
    public boolean takesBothBodies() {
        return this != TABLE;
    }
}
