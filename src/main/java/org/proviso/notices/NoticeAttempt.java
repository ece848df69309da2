package org.proviso.notices;

import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/**
 * One attempt to tell a voter, on the county's clock; {@code cameBackAt} is when the mail came back, null if it did not.
 * The hash is SHA-256 of the letter's text. {@code loggedBy} is a user name. The reason to take it back is null where nobody
 * did.
 */
public record NoticeAttempt(
        int number,
        NoticeChannel channel,
        LocalDateTime sentAt,
        @Nullable LocalDateTime cameBackAt,
        String letterHash,
        String loggedBy,
        @Nullable String takenBackBecause) {

    /** Whether it was logged by mistake and taken back: it stays readable, and nothing rests on it. */
    public boolean isTakenBack() {
        return takenBackBecause != null;
    }
}
