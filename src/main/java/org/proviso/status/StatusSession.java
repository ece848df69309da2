package org.proviso.status;

import java.time.LocalDateTime;
import org.proviso.board.BoardSession;
import org.proviso.board.BodyKind;
import org.proviso.core.ElectionId;

/** A session as the board announced it; its time is on the county's clock. */
record StatusSession(
        ElectionId electionId, int sessionNo, BodyKind body, LocalDateTime calledFor, boolean opened, boolean closed) {

    static StatusSession of(BoardSession session) {
        return new StatusSession(
                session.key().electionId(),
                session.key().sessionNo(),
                session.body(),
                session.calledFor(),
                session.openedAt() != null,
                session.closedAt() != null);
    }

    /** Whether it may still decide: it sits, or is called for this day or a later one. */
    boolean isAhead(LocalDateTime now) {
        return !closed && (opened || !calledFor.toLocalDate().isBefore(now.toLocalDate()));
    }
}
