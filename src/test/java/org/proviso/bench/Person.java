package org.proviso.bench;

import java.time.LocalDate;

/** An invented person as they are: what the roll holds of them, and what they write, may differ. */
record Person(
        String id,
        String last,
        String first,
        String middle,
        String suffix,
        boolean female,
        LocalDate born,
        Home home,
        String last4) {

    /** Where a person lives. */
    record Home(int house, String street, String unit, String city, String zip) {}

    Person numbered(String newId) {
        return new Person(newId, last, first, middle, suffix, female, born, home, last4);
    }

    Person surnamed(String newLast) {
        return new Person(id, newLast, first, middle, suffix, female, born, home, last4);
    }

    Person named(String newFirst, String newMiddle, String newSuffix) {
        return new Person(id, last, newFirst, newMiddle, newSuffix, female, born, home, last4);
    }

    Person born(LocalDate newBorn, String newLast4) {
        return new Person(id, last, first, middle, suffix, female, newBorn, home, newLast4);
    }

    Person at(Home newHome) {
        return new Person(id, last, first, middle, suffix, female, born, newHome, last4);
    }
}
