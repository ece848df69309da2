package org.proviso.core.matching.index;

import org.proviso.core.matching.spelling.Nicknames;

/** A given name as envelopes write it, and what its bearer may go by on the roll: looked up once, since names come again. */
public record GivenName(Written written, Written asSurname, Written.Codes givens, Written.Codes middles) {

    public static final GivenName NONE =
            new GivenName(Written.NOTHING, Written.NOTHING, new Written.Codes(), new Written.Codes());

    public static GivenName of(RollWords words, String name, int belowZero) {
        GivenName given = new GivenName(
                Written.of(words.givens(), name, belowZero),
                Written.of(words.surnames(), name, belowZero),
                new Written.Codes(),
                new Written.Codes());
        for (String form : Nicknames.of(name)) {
            given.givens.add(words.givens(), form);
            if (form.length() > 1) {
                given.middles.add(words.middles(), form);
            }
        }
        return given;
    }
}
