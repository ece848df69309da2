package org.proviso.core;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The number printed on an envelope; one envelope of an election has it. See {@link EnvelopeKey}. */
public record EnvelopeNumber(String value) implements Key, Comparable<EnvelopeNumber> {

    private static final int LONGEST = 60;

    public EnvelopeNumber {
        Key.checked(value, "an envelope number", LONGEST);
    }

    /** The key of this value; null where there is no value. */
    public static @Nullable EnvelopeNumber orNull(@Nullable String value) {
        return value == null ? null : new EnvelopeNumber(value);
    }

    /** The key of what somebody typed; empty where that cannot be one. */
    public static Optional<EnvelopeNumber> find(String typed) {
        return Key.isPossible(typed, LONGEST) ? Optional.of(new EnvelopeNumber(typed)) : Optional.empty();
    }

    @Override
    public int compareTo(EnvelopeNumber other) {
        return value.compareTo(other.value);
    }

    /** As it reads in a sentence: the value alone. */
    @Override
    public String toString() {
        return value;
    }
}
