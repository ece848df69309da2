package org.proviso.board;

import java.time.Instant;
import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.OptimisticLockingFailureException;

/**
 * A session of a deciding body: called for a time on the county's clock, opened and closed at a moment as the server
 * saw it (null before). {@code calledAhead} is false where an official sat down to decide without calling a session.
 */
public record BoardSession(
        SessionKey key,
        BodyKind body,
        LocalDateTime calledFor,
        String place,
        int quorum,
        @Nullable Instant openedAt,
        @Nullable Instant closedAt,
        int version,
        boolean calledAhead) {

    /** Opened and not closed yet. */
    public boolean isOpen() {
        return openedAt != null && closedAt == null;
    }

    BoardSession at(int seen) {
        if (seen != version) {
            throw new OptimisticLockingFailureException(
                    "The session " + key.sessionNo() + " was changed since you saw it.");
        }
        return this;
    }
}
