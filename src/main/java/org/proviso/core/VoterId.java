package org.proviso.core;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The number of a voter on the roll. */
public record VoterId(String value) implements Key, Comparable<VoterId> {

    private static final int LONGEST = 60;

    public VoterId {
        Key.checked(value, "a voter number", LONGEST);
    }

    /** The key of this value; null where there is no value. */
    public static @Nullable VoterId orNull(@Nullable String value) {
        return value == null ? null : new VoterId(value);
    }

    /** The key of what somebody typed; empty where that cannot be one. */
    public static Optional<VoterId> find(String typed) {
        return Key.isPossible(typed, LONGEST) ? Optional.of(new VoterId(typed)) : Optional.empty();
    }

    @Override
    public int compareTo(VoterId other) {
        return value.compareTo(other.value);
    }

    /** As it reads in a sentence: the value alone. */
    @Override
    public String toString() {
        return value;
    }
}
