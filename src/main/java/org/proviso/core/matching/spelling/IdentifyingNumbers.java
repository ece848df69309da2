package org.proviso.core.matching.spelling;

import java.nio.charset.StandardCharsets;

/** Reads the numbers by which a person is told apart. */
public final class IdentifyingNumbers {

    public static final int NONE = 0;

    private static final int LAST4_LENGTH = 4;

    private static final int MOST_HOUSE_DIGITS = 8;

    private IdentifyingNumbers() {}

    /** Four digits, spread, or none; 0000 is a blank that was filled, not a number (common practice). */
    public static int last4(String text) {
        String digits = text.strip();
        boolean number = digits.length() == LAST4_LENGTH && Digits.only(digits);
        return number ? Digits.spread(Integer.parseInt(digits)) : NONE;
    }

    /** The same from the bytes of a cell. */
    public static int last4(byte[] bytes, int start, int end) {
        if (end - start != LAST4_LENGTH) {
            return end == start ? NONE : last4(new String(bytes, start, end - start, StandardCharsets.UTF_8));
        }
        int spread = 0;
        for (int i = start; i < end; i++) {
            int digit = bytes[i] - '0';
            if (digit < 0 || digit > 9) {
                return NONE;
            }
            spread = spread << 4 | digit;
        }
        return spread;
    }

    /** A plain house number from the bytes of a cell; -1 where it is written in another way. */
    public static int house(byte[] bytes, int start, int end) {
        if (end - start > MOST_HOUSE_DIGITS || end == start) {
            return end == start ? 0 : -1;
        }
        int number = 0;
        for (int i = start; i < end; i++) {
            int digit = bytes[i] - '0';
            if (digit < 0 || digit > 9) {
                return -1;
            }
            number = 10 * number + digit;
        }
        return number;
    }

    /** A license number as one number for comparing, or 0 when there is none; letters and digits count only. */
    public static int license(String text) {
        if (text.isEmpty()) {
            return 0;
        }
        String plain = NameText.joined(NameText.fold(text));
        int hash = plain.hashCode();
        return plain.isEmpty() ? 0 : hash == 0 ? 1 : hash;
    }

    /** The same from the bytes of a cell. */
    public static int zip(byte[] bytes, int start, int end) {
        int zip = 0;
        int digits = 0;
        for (int i = start; i < end && digits < 5; i++) {
            if (bytes[i] >= '0' && bytes[i] <= '9') {
                zip = zip * 10 + bytes[i] - '0';
                digits++;
            }
        }
        return digits == 5 ? zip : 0;
    }

    /** The first five digits of a ZIP code, or 0 when there are not five. */
    public static int zip(String text) {
        int zip = 0;
        int digits = 0;
        for (int i = 0; i < text.length() && digits < 5; i++) {
            char letter = text.charAt(i);
            if (letter >= '0' && letter <= '9') {
                zip = zip * 10 + letter - '0';
                digits++;
            }
        }
        return digits == 5 ? zip : 0;
    }
}
