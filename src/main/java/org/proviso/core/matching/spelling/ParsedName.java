package org.proviso.core.matching.spelling;

import org.proviso.core.PersonName;

/**
 * A written name in one spelling: surname (halves of a double one a space apart), first given name, the other given
 * names, generation. A part that was not given is empty.
 */
public record ParsedName(String surname, String given, String middle, NameSuffix suffix) {

    public static ParsedName of(PersonName name) {
        String last = NameText.fold(name.last());
        String first = NameText.fold(name.first());
        NameSuffix suffix = NameSuffix.of(NameText.fold(name.suffix()));
        if (suffix == NameSuffix.NONE) {
            suffix = NameSuffix.atEnd(last);
        }
        if (suffix == NameSuffix.NONE) {
            suffix = NameSuffix.atEnd(first);
        }
        String surname = NameText.surname(NameText.withoutSuffix(last));
        return withGiven(surname, NameText.withoutSuffix(first), NameText.fold(name.middle()), suffix);
    }

    private static ParsedName withGiven(String surname, String first, String middle, NameSuffix suffix) {
        int space = first.indexOf(' ');
        if (space < 0) {
            return new ParsedName(surname, first, middle, suffix);
        }
        String rest = (first.substring(space + 1) + " " + middle).strip();
        return new ParsedName(surname, first.substring(0, space), rest, suffix);
    }
}
