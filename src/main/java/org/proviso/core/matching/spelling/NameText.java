package org.proviso.core.matching.spelling;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Brings a written name to one spelling: capital ASCII letters, no accents, apostrophes or periods, hyphens as spaces,
 * a particle joined to the word after it ({@code Mc Donald}, {@code de la Cruz}, {@code O'Brien}). What spaces are left
 * part the halves of a double name.
 */
public final class NameText {

    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final String SILENT = "'\u2019\u2018`\u00b4.";

    /** Letters that a decomposition leaves whole. */
    private static final Map<String, String> WHOLE =
            Map.of("\u00d8", "O", "\u0141", "L", "\u00df", "SS", "\u00c6", "AE", "\u0152", "OE", "\u0110", "D");

    private static final Set<String> PARTICLES = Set.of(
            "MC", "MAC", "O", "D", "DE", "DEL", "DELA", "DELOS", "DI", "DA", "DO", "DOS", "DU", "LA", "LE", "LOS",
            "LAS", "VAN", "VON", "DER", "DEN", "ST", "SAINT", "SAN", "SANTA", "TEN", "TER", "EL", "AL", "BEN", "FITZ");

    private NameText() {}

    /** Capital letters and digits in words one space apart. */
    public static String fold(String text) {
        String bare = isAscii(text) ? text : withoutMarks(text.toUpperCase(Locale.ROOT));
        char[] folded = new char[2 * bare.length()];
        int length = 0;
        boolean pending = false;
        for (int i = 0; i < bare.length(); i++) {
            char letter = upper(bare.charAt(i));
            if ((letter >= 'A' && letter <= 'Z') || (letter >= '0' && letter <= '9')) {
                if (pending && length > 0) {
                    folded[length++] = ' ';
                }
                folded[length++] = letter;
                pending = false;
            } else if (SILENT.indexOf(letter) < 0) {
                pending = true;
            }
        }
        return length == 0 ? "" : new String(folded, 0, length);
    }

    /** Capital letters with their accents taken off. */
    static String withoutMarks(String upper) {
        String bare =
                MARKS.matcher(Normalizer.normalize(upper, Normalizer.Form.NFD)).replaceAll("");
        for (Map.Entry<String, String> letter : WHOLE.entrySet()) {
            bare = bare.replace(letter.getKey(), letter.getValue());
        }
        return bare;
    }

    /** A surname in one spelling; spaces part the halves of a double surname only. */
    public static String surname(String text) {
        String surname = fold(text);
        String before = "";
        // Joining D and A gives DA, which is a particle too.
        while (surname.indexOf(' ') >= 0 && !surname.equals(before)) {
            before = surname;
            surname = bound(surname.split(" "));
        }
        return surname;
    }

    private static String bound(String[] words) {
        StringBuilder joined = new StringBuilder();
        for (int i = 0; i < words.length; i++) {
            joined.append("SAINT".equals(words[i]) ? "ST" : words[i]);
            boolean binds = i + 1 == words.length || PARTICLES.contains(words[i]);
            joined.append(binds ? "" : " ");
        }
        return joined.toString();
    }

    /** The words of a folded text. */
    public static List<String> words(String folded) {
        return folded.isEmpty() ? List.of() : List.of(folded.split(" "));
    }

    /** The text without its spaces. */
    public static String joined(String folded) {
        return folded.indexOf(' ') < 0 ? folded : folded.replace(" ", "");
    }

    /** The text without a generation's mark at its end, which some offices key into the name. */
    public static String withoutSuffix(String folded) {
        return NameSuffix.atEnd(folded) == NameSuffix.NONE ? folded : folded.substring(0, folded.lastIndexOf(' '));
    }

    private static char upper(char letter) {
        return letter >= 'a' && letter <= 'z' ? (char) (letter - 'a' + 'A') : letter;
    }

    private static boolean isAscii(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) > 127) {
                return false;
            }
        }
        return true;
    }
}
