package org.proviso.core.matching.index;

import org.proviso.core.matching.spelling.Nicknames;

/** A given name as envelopes write it, and what its bearer may go by on the roll: looked up once, since names come again. */
public record GivenName(
        WrittenName written, WrittenName asSurname, WrittenName.Codes givens, WrittenName.Codes middles) {

    public static final GivenName NONE =
            new GivenName(WrittenName.NOTHING, WrittenName.NOTHING, new WrittenName.Codes(), new WrittenName.Codes());

    public static GivenName of(RollWords words, String name, int belowZero) {
        GivenName given = new GivenName(
                WrittenName.of(words.givens(), name, belowZero),
                WrittenName.of(words.surnames(), name, belowZero),
                new WrittenName.Codes(),
                new WrittenName.Codes());
        for (String form : Nicknames.of(name)) {
            given.givens.add(words.givens(), form);
            if (form.length() > 1) {
                given.middles.add(words.middles(), form);
            }
        }
        return given;
    }
}
