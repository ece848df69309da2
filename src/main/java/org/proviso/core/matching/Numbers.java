package org.proviso.core.matching;

/** Reads the numbers by which a person is told apart. */
final class Numbers {

    static final int NONE = 0;

    private static final int LAST4_LENGTH = 4;

    private Numbers() {}

    /** Four digits, spread, or none; 0000 is a blank that was filled, not a number (common practice). */
    static int last4(String text) {
        String digits = text.strip();
        boolean number = digits.length() == LAST4_LENGTH && digits.chars().allMatch(c -> c >= '0' && c <= '9');
        return number ? Digits.spread(Integer.parseInt(digits)) : NONE;
    }

    /** A license number as one number for comparing, or 0 when there is none; letters and digits count only. */
    static int license(String text) {
        if (text.isEmpty()) {
            return 0;
        }
        String plain = NameText.joined(NameText.fold(text));
        int hash = plain.hashCode();
        return plain.isEmpty() ? 0 : hash == 0 ? 1 : hash;
    }

    /** The first five digits of a ZIP code, or 0 when there are not five. */
    static int zip(String text) {
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
