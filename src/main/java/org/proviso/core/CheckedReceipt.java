package org.proviso.core;

import java.util.Optional;

/**
 * Receipt numbers with a check digit: nine digits, the last by ISO/IEC 7064, MOD 11,10, written {@code 4817-2206-5}. The
 * check digit finds every wrong digit and 44 of 45 swaps of two neighbors.
 */
public final class CheckedReceipt {

    private static final int LENGTH = 9;

    /** What is wrong with a number that was written or typed. */
    public enum Problem implements Code {
        NOT_ONLY_DIGITS("may contain digits only"),
        NOT_NINE_DIGITS("must have nine digits"),
        CHECK_DIGIT("has a wrong digit or two swapped digits");

        private final String words;

        Problem(String words) {
            this.words = words;
        }

        /** As it reads after the number. */
        public String words() {
            return words;
        }
    }

    private CheckedReceipt() {}

    /** The number whose first eight digits these are. */
    public static ReceiptNumber of(String eight) {
        return find(eight + checkDigit(eight))
                .orElseThrow(() -> new IllegalArgumentException("\"" + eight + "\" is not eight digits."));
    }

    /** The number that was typed, ignoring blanks and dashes, as printed; or empty where it is mistyped. */
    public static Optional<ReceiptNumber> find(String typed) {
        return slip(typed).isPresent() ? Optional.empty() : Optional.of(printed(bare(typed)));
    }

    /** The first error in what was typed, ignoring blanks and dashes; empty where there is none. */
    public static Optional<Problem> slip(String typed) {
        String digits = bare(typed);
        if (!digits.chars().allMatch(digit -> digit >= '0' && digit <= '9')) {
            return Optional.of(Problem.NOT_ONLY_DIGITS);
        }
        if (digits.length() != LENGTH) {
            return Optional.of(Problem.NOT_NINE_DIGITS);
        }
        boolean right = digits.charAt(LENGTH - 1) == checkDigit(digits.substring(0, LENGTH - 1));
        return right ? Optional.empty() : Optional.of(Problem.CHECK_DIGIT);
    }

    /** As printed on the receipt: {@code 4817-2206-5}. */
    private static ReceiptNumber printed(String digits) {
        return new ReceiptNumber(digits.substring(0, 4) + "-" + digits.substring(4, 8) + "-" + digits.substring(8));
    }

    private static String bare(String typed) {
        return typed.replaceAll("[\\s\\p{Pd}]", "");
    }

    /** ISO/IEC 7064:2003, the hybrid system MOD 11,10 (from memory; compared in a test with published numbers). */
    static char checkDigit(String digits) {
        int product = 10;
        for (int i = 0; i < digits.length(); i++) {
            int sum = (product + digits.charAt(i) - '0') % 10;
            product = (sum == 0 ? 10 : sum) * 2 % 11;
        }
        return (char) ('0' + (11 - product) % 10);
    }
}
