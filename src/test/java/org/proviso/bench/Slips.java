package org.proviso.bench;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/** What hand, eye and keyboard do to words and digits. */
final class Slips {

    private static final String LETTERS = "etaoinshrdlucmfwygpbvk";
    private static final String[][] READ_AS = {
        {"ei", "ie"},
        {"ll", "l"},
        {"nn", "n"},
        {"tt", "t"},
        {"m", "n"},
        {"u", "v"},
        {"e", "c"},
        {"l", "t"},
        {"g", "q"},
        {"ck", "k"},
        {"ph", "f"},
        {"sch", "sh"},
        {"y", "ey"},
        {"er", "ar"},
        {"son", "sen"}
    };

    private final SplittableRandom random;

    Slips(SplittableRandom random) {
        this.random = random;
    }

    /** A word with one slip; words of two letters stay. */
    String word(String word) {
        if (word.length() < 3) {
            return word;
        }
        int at = 1 + random.nextInt(word.length() - 1);
        return switch (random.nextInt(5)) {
            case 0 -> word.substring(0, at) + word.substring(at + 1);
            case 1 -> word.substring(0, at) + letter() + word.substring(at);
            case 2 -> word.substring(0, at) + letter() + word.substring(at + 1);
            case 3 -> swapped(word, Math.min(at, word.length() - 2));
            default -> misread(word);
        };
    }

    private char letter() {
        return LETTERS.charAt(random.nextInt(LETTERS.length()));
    }

    private static String swapped(String word, int at) {
        return word.substring(0, at) + word.charAt(at + 1) + word.charAt(at) + word.substring(at + 2);
    }

    private String misread(String word) {
        int from = random.nextInt(READ_AS.length);
        for (int i = 0; i < READ_AS.length; i++) {
            String[] pair = READ_AS[(from + i) % READ_AS.length];
            int at = word.indexOf(pair[0], 1);
            if (at > 0) {
                return word.substring(0, at) + pair[1] + word.substring(at + pair[0].length());
            }
        }
        return swapped(word, 1);
    }

    /** Digits with one changed or two neighbors exchanged. */
    String digits(String digits) {
        if (random.nextInt(3) == 0) {
            String swapped = swapped(digits, random.nextInt(digits.length() - 1));
            if (!swapped.equals(digits)) {
                return swapped;
            }
        }
        int at = random.nextInt(digits.length());
        int digit = (digits.charAt(at) - '0' + 1 + random.nextInt(9)) % 10;
        return digits.substring(0, at) + digit + digits.substring(at + 1);
    }

    /** A day or month with a wrong digit, or the date itself where that gives none. */
    LocalDate day(LocalDate born) {
        String text = born.toString();
        return date(
                text.substring(0, 5)
                        + (random.nextBoolean()
                                ? digits(text.substring(5, 7)) + text.substring(7)
                                : text.substring(5, 8) + digits(text.substring(8))),
                born);
    }

    /** A year with a wrong digit in its second half. */
    LocalDate year(LocalDate born) {
        String text = born.toString();
        return date(text.substring(0, 2) + digits(text.substring(2, 4)) + text.substring(4), born);
    }

    LocalDate dayForMonth(LocalDate born) {
        String text = born.toString();
        return date(text.substring(0, 5) + text.substring(8) + "-" + text.substring(5, 7), born);
    }

    private static LocalDate date(String text, LocalDate otherwise) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            return otherwise;
        }
    }

    /** The date as a cell. */
    static String cell(@Nullable LocalDate date) {
        return date == null ? "" : date.toString();
    }
}
