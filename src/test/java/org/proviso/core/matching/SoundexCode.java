package org.proviso.core.matching;

import java.util.Locale;

/** The published code of a sound, a letter and three digits, which the program's number is compared with. */
final class SoundexCode {

    private static final String CODES = "01230120022455012623010202";
    /** First letters that code alike are one; vowels are 7, H, W and Y are 8. */
    private static final String GROUPS = "71237128722455712623718282";

    private static final int LENGTH = 4;

    private SoundexCode() {}

    /** The code of a name in letters from A to Z, by the rules of the National Archives. */
    static String of(String name) {
        StringBuilder code = new StringBuilder(LENGTH);
        char last = '0';
        for (char letter : name.toUpperCase(Locale.ROOT).toCharArray()) {
            if (letter < 'A' || letter > 'Z') {
                continue;
            }
            char digit = CODES.charAt(letter - 'A');
            if (code.isEmpty()) {
                code.append(letter);
            } else if (digit != '0' && digit != last && code.length() < LENGTH) {
                code.append(digit);
            }
            last = letter == 'H' || letter == 'W' ? last : digit;
        }
        while (!code.isEmpty() && code.length() < LENGTH) {
            code.append('0');
        }
        return code.toString();
    }

    /** The program's number for a sound of that code. */
    static int number(String code) {
        return Integer.parseInt(GROUPS.charAt(code.charAt(0) - 'A') + code.substring(1));
    }
}
