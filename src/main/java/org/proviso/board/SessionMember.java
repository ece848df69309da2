package org.proviso.board;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A member who came to a session, and left it (null while there). */
public record SessionMember(
        String userName, Instant arrivedAt, @Nullable Instant leftAt) {

    public boolean isThere() {
        return leftAt == null;
    }
}
