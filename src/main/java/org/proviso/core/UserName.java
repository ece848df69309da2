package org.proviso.core;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The name under which a person of the office signs in. */
public record UserName(String value) implements Key, Comparable<UserName> {

    private static final int LONGEST = 60;

    public UserName {
        Key.checked(value, "a user name", LONGEST);
    }

    /** The key of this value; null where there is no value. */
    public static @Nullable UserName orNull(@Nullable String value) {
        return value == null ? null : new UserName(value);
    }

    /** The key of what somebody typed; empty where that cannot be one. */
    public static Optional<UserName> find(String typed) {
        return Key.isPossible(typed, LONGEST) ? Optional.of(new UserName(typed)) : Optional.empty();
    }

    @Override
    public int compareTo(UserName other) {
        return value.compareTo(other.value);
    }

    /** As it reads in a sentence: the value alone. */
    @Override
    public String toString() {
        return value;
    }
}
