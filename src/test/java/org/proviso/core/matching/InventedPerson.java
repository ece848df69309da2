package org.proviso.core.matching;

import java.time.LocalDate;
import org.proviso.core.PersonName;
import org.proviso.core.VoterId;
import org.proviso.core.matching.index.RollEntry;

/** One invented person, as they truly are. */
public record InventedPerson(
        String id,
        String last,
        String first,
        String middle,
        String suffix,
        boolean female,
        LocalDate born,
        int house,
        String street,
        String unit,
        String city,
        String zip,
        String last4) {

    InventedPerson named(String newId, String newFirst, String newMiddle, String newSuffix) {
        return new InventedPerson(
                newId, last, newFirst, newMiddle, newSuffix, female, born, house, street, unit, city, zip, last4);
    }

    InventedPerson born(LocalDate date, String number) {
        return new InventedPerson(
                id, last, first, middle, suffix, female, date, house, street, unit, city, zip, number);
    }

    InventedPerson at(InventedPerson other) {
        return new InventedPerson(
                id,
                last,
                first,
                middle,
                suffix,
                female,
                born,
                other.house,
                other.street,
                other.unit,
                other.city,
                other.zip,
                last4);
    }

    InventedPerson surnamed(String surname) {
        return new InventedPerson(
                id, surname, first, middle, suffix, female, born, house, street, unit, city, zip, last4);
    }

    public RollEntry entry() {
        return new RollEntry(
                new VoterId(id),
                new PersonName(last, first, middle, suffix),
                "",
                born,
                String.valueOf(house),
                street,
                unit,
                zip,
                last4,
                "");
    }
}
