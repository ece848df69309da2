package org.proviso.core.matching.spelling;

/**
 * The sound of a name as a number of four digits, by the rules of the National Archives (Soundex System, General
 * Information Leaflet 55): equal codes side by side count once, also with H or W between them; a vowel parts them.
 */
public final class Soundex {

    /** More than any {@link #number}. */
    public static final int NUMBERS = 9_000;

    private static final String CODES = "01230120022455012623010202";
    private static final int DIGITS = 3;

    private Soundex() {}

    /**
     * The sound as a number above zero for tables, or 0 when there is none. First letters that code alike are one here
     * (Catherine and Kathryn, Geoffrey and Jeffrey), and so are first vowels: wider than the code, for finding.
     */
    public static int number(String name) {
        int first = -1;
        int digits = 0;
        int count = 0;
        char last = '0';
        for (int i = 0; i < name.length() && count < DIGITS; i++) {
            char letter = upper(name.charAt(i));
            if (letter < 'A' || letter > 'Z') {
                continue;
            }
            char digit = CODES.charAt(letter - 'A');
            if (first < 0) {
                first = digit > '0' ? digit - '0' : letter == 'H' || letter == 'W' || letter == 'Y' ? 8 : 7;
            } else if (digit != '0' && digit != last) {
                digits = 10 * digits + digit - '0';
                count++;
            }
            last = letter == 'H' || letter == 'W' ? last : digit;
        }
        for (; count < DIGITS; count++) {
            digits *= 10;
        }
        return first < 0 ? 0 : first * 1000 + digits;
    }

    private static char upper(char letter) {
        return letter >= 'a' && letter <= 'z' ? (char) (letter - 'a' + 'A') : letter;
    }
}
