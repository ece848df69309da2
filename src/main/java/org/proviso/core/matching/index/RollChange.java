package org.proviso.core.matching.index;

import org.jspecify.annotations.Nullable;

/** One voter's record in an older and in a newer roll, as the match reads it; null where a roll has none. */
public record RollChange(
        @Nullable RollEntry before, @Nullable RollEntry after) {

    /** Whether the match would read both alike: a new status or precinct is nothing to it. */
    public boolean readsAlike() {
        return before != null && before.equals(after);
    }
}
