package org.proviso.core.matching;

import org.proviso.core.matching.index.FormerName;
import org.proviso.core.matching.index.KeyFields;
import org.proviso.core.matching.spelling.AddressNormalizer;
import org.proviso.core.matching.spelling.IdentifyingNumbers;
import org.proviso.core.matching.spelling.NameSuffix;
import org.proviso.core.matching.spelling.NameText;
import org.proviso.core.matching.spelling.Nicknames;
import org.proviso.core.matching.spelling.PackedDate;
import org.proviso.core.matching.spelling.ParsedName;
import org.proviso.core.matching.spelling.Soundex;
import org.proviso.core.matching.spelling.StreetAddress;
import org.proviso.core.matching.spelling.WrittenBirthDate;

/** An envelope's person in the index's terms: one spelling, packed numbers. */
public record EnvelopePerson(
        ParsedName name,
        String formerSurname,
        int birth,
        WrittenBirthDate writtenBirth,
        StreetAddress home,
        int zip,
        StreetAddress formerHome,
        int formerZip,
        int last4,
        int license) {

    private static final StreetAddress NOWHERE = new StreetAddress(0, "", "", "");

    /** Before any envelope is taken. */
    static final EnvelopePerson NOBODY = new EnvelopePerson(
            new ParsedName("", "", "", NameSuffix.NONE), "", 0, WrittenBirthDate.NOTHING, NOWHERE, 0, NOWHERE, 0, 0, 0);

    public static EnvelopePerson of(MatchQuery query) {
        ParsedName name = ParsedName.of(query.name());
        return new EnvelopePerson(
                name,
                FormerName.surname(query.formerName(), name),
                PackedDate.of(query.birthDate()),
                query.writtenBirthDate(),
                AddressNormalizer.parse(query.residence()),
                IdentifyingNumbers.zip(query.residence().zip()),
                AddressNormalizer.parse(query.former()),
                IdentifyingNumbers.zip(query.former().zip()),
                IdentifyingNumbers.last4(query.idLast4()),
                IdentifyingNumbers.license(query.driversLicense()));
    }

    /** What to look this person up by: nicknames, halves, exchanged names and exchanged dates included. */
    public void fill(KeyFields fields) {
        fields.clear();
        surname(fields, name.surname());
        surname(fields, formerSurname);
        surname(fields, name.given());
        for (String given : Nicknames.of(name.given())) {
            fields.addGiven(given, Soundex.number(given));
        }
        fields.addGiven(name.given(), Soundex.number(name.given()));
        for (String other : NameText.words(name.middle())) {
            fields.addGiven(other, Soundex.number(other));
        }
        fields.addGiven(name.surname(), Soundex.number(name.surname()));
        fields.addDate(birth);
        fields.addDate(PackedDate.swapped(birth));
        fields.date = birth;
        fields.undated = birth != PackedDate.UNKNOWN;
        fields.last4 = last4;
        fields.license = license;
        fields.addAddress(home.houseNumber(), hash(home.street()));
        fields.addAddress(formerHome.houseNumber(), hash(formerHome.street()));
    }

    private static int hash(String street) {
        return NameText.joined(street).hashCode();
    }

    private static void surname(KeyFields fields, String surname) {
        fields.addSurname(surname, Soundex.number(surname));
    }
}
