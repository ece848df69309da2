package org.proviso.core.matching.index;

import org.proviso.core.matching.spelling.NameText;
import org.proviso.core.matching.spelling.Nicknames;
import org.proviso.core.matching.spelling.ParsedName;

/**
 * The surname in a former name. The box is free text: a surname alone, {@code Surname, Given}, or a whole name in
 * reading order, of which the last word is taken when its first is the person's given name.
 */
public final class FormerName {

    private FormerName() {}

    /** The former surname in one spelling, or empty when none is given or it is the present one. */
    public static String surname(String text, ParsedName name) {
        if (text.isBlank()) {
            return "";
        }
        int comma = text.indexOf(',');
        String folded = NameText.fold(comma < 0 ? text : text.substring(0, comma));
        int space = folded.lastIndexOf(' ');
        if (comma < 0 && space > 0 && startsWithGiven(folded, name)) {
            folded = NameText.withoutSuffix(folded);
            folded = folded.substring(folded.indexOf(' ') + 1);
            folded = dropMiddle(folded, name.middle());
        }
        String surname = NameText.surname(folded);
        return surname.equals(name.surname()) ? "" : surname;
    }

    private static boolean startsWithGiven(String folded, ParsedName name) {
        String first = folded.substring(0, folded.indexOf(' '));
        return first.equals(name.given()) || Nicknames.kin(first, name.given());
    }

    /** An initial, or the middle name, may stand before the surname. */
    private static String dropMiddle(String folded, String middle) {
        int space = folded.indexOf(' ');
        if (space < 0) {
            return folded;
        }
        String first = folded.substring(0, space);
        return first.length() == 1 || first.equals(middle) ? folded.substring(space + 1) : folded;
    }
}
