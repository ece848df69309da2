package org.proviso.core;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** An election of the office, by the short name under which it was loaded: {@code tamarack-general-2026}. */
public record ElectionId(String value) implements Key, Comparable<ElectionId> {

    private static final int LONGEST = 60;

    public ElectionId {
        Key.checked(value, "the name of an election", LONGEST);
    }

    /** The key of this value; null where there is no value. */
    public static @Nullable ElectionId orNull(@Nullable String value) {
        return value == null ? null : new ElectionId(value);
    }

    /** The key of what somebody typed; empty where that cannot be one. */
    public static Optional<ElectionId> find(String typed) {
        return Key.isPossible(typed, LONGEST) ? Optional.of(new ElectionId(typed)) : Optional.empty();
    }

    @Override
    public int compareTo(ElectionId other) {
        return value.compareTo(other.value);
    }

    /** As it reads in a sentence: the value alone. */
    @Override
    public String toString() {
        return value;
    }
}
