package org.proviso.board;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.proviso.core.UserName;

/** A member who came to a session, and left it (null while there). */
public record SessionMember(
        UserName userName, Instant arrivedAt, @Nullable Instant leftAt) {

    public boolean isThere() {
        return leftAt == null;
    }
}
