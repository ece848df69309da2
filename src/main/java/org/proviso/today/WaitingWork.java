package org.proviso.today;

import org.jspecify.annotations.Nullable;

/**
 * Something that waits for whoever looks: how many, of what, a sentence about them, by when (late or not), and the
 * link that begins it with its key (null for none).
 */
record WaitingWork(
        int number,
        String what,
        String detail,
        String by,
        boolean late,
        String link,
        String path,
        @Nullable String key) {}
