package org.proviso.today;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Something that waits for whoever looks: how many, of what, a sentence about them, since when the oldest waits (null where
 * nobody can say), whether it is late, and the link that begins it with its key (null for none).
 */
record WaitingWork(
        int number,
        String what,
        String detail,
        @Nullable Instant since,
        boolean late,
        String link,
        String path,
        @Nullable String key) {

    static WaitingWork of(int number, String what, String detail, String link, String path) {
        return new WaitingWork(number, what, detail, null, false, link, path, null);
    }

    WaitingWork since(@Nullable Instant oldest) {
        return new WaitingWork(number, what, detail, oldest, late, link, path, key);
    }

    /** Somebody is waiting already, or a right runs out. */
    WaitingWork late(boolean isLate) {
        return new WaitingWork(number, what, detail, since, isLate, link, path, key);
    }

    WaitingWork withKey(String pressed) {
        return new WaitingWork(number, what, detail, since, late, link, path, pressed);
    }
}
