package org.proviso.core;

import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The number on a voter's receipt, as it is written; one envelope of the office has it. An office may write its own
 * numbers, or those of {@link CheckedReceipt}.
 */
public record ReceiptNumber(String value) implements Key, Comparable<ReceiptNumber> {

    private static final int LONGEST = 60;

    public ReceiptNumber {
        Key.checked(value, "a receipt number", LONGEST);
    }

    /** The number of this text; null where there is no text: the files of some envelopes have no receipt number. */
    public static @Nullable ReceiptNumber orNull(@Nullable String text) {
        return text == null || text.isEmpty() ? null : new ReceiptNumber(text);
    }

    /** The number that somebody typed; empty where that cannot be one. */
    public static Optional<ReceiptNumber> find(String typed) {
        return Key.isPossible(typed, LONGEST) ? Optional.of(new ReceiptNumber(typed)) : Optional.empty();
    }

    /** As files, tables and pages have it; empty where there is none. */
    public static String text(@Nullable ReceiptNumber number) {
        return number == null ? "" : number.value();
    }

    /** Its letters and digits, in capitals: what two spellings of the same number share. */
    public String compared() {
        return value.toUpperCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    @Override
    public int compareTo(ReceiptNumber other) {
        return value.compareTo(other.value);
    }

    /** As it reads in a sentence: the value alone. */
    @Override
    public String toString() {
        return value;
    }
}
