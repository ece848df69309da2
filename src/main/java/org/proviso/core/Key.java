package org.proviso.core;

import java.util.Collection;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What tells one thing of the office from all others of its kind: never empty, and never taken for another kind. */
public sealed interface Key permits ElectionId, EnvelopeNumber, ReceiptNumber, VoterId, UserName {

    /** The key as files and tables have it. */
    String value();

    /** The key as files and tables have it; null where there is none. */
    static @Nullable String text(@Nullable Key key) {
        return key == null ? null : key.value();
    }

    /** Keys one after the other, with something between them, for a sentence or a list. */
    static String join(String between, Collection<? extends Key> keys) {
        return keys.stream().map(Key::value).collect(Collectors.joining(between));
    }

    static boolean isPossible(String value, int longest) {
        return !value.isBlank() && value.length() <= longest;
    }

    /** The value, if it can be a key at all: not blank, and no longer than a table keeps. */
    static String checked(String value, String what, int longest) {
        if (!isPossible(value, longest)) {
            throw new IllegalArgumentException("\"" + value + "\" is not " + what + ".");
        }
        return value;
    }
}
