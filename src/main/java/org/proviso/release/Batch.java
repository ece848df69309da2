package org.proviso.release;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.springframework.dao.OptimisticLockingFailureException;

/**
 * Envelopes opened together, so that no ballot can be told from the others: how many, whether they are kept apart for
 * court-extended hours, the two who open them, how many were empty, and when. A batch may be dissolved before it is
 * opened: one person asks, another does it. What has not happened is null.
 */
public record Batch(
        ElectionId electionId,
        int number,
        boolean heldApart,
        int envelopes,
        @Nullable UserName firstOpener,
        @Nullable String secondOpener,
        @Nullable Instant openedAt,
        @Nullable Integer empty,
        @Nullable Instant handedOffAt,
        String aloneBecause,
        @Nullable UserName dissolveAskedBy,
        String dissolveBecause,
        @Nullable UserName dissolvedBy,
        @Nullable Instant dissolvedAt,
        int version) {

    /** The batch, if it is as it was seen. */
    Batch at(int seen) {
        if (seen != version) {
            throw new OptimisticLockingFailureException("The batch was changed meanwhile.");
        }
        return this;
    }

    /** Whether its envelopes are still closed and still belong together. */
    public boolean isClosed() {
        return openedAt == null && dissolvedAt == null;
    }

    /** The ballots that came out of it, once it is open. */
    public int ballots() {
        return empty == null ? 0 : envelopes - empty;
    }
}
