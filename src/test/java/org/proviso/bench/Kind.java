package org.proviso.bench;

/** What happened to an envelope, or who its person is; one envelope may have several. */
enum Kind {
    MOVED("moved"),
    CHANGED_SURNAME("changed surname"),
    NICKNAME("goes by a nickname"),
    MIDDLE_NAME("goes by the middle name"),
    INITIAL("given name an initial"),
    SURNAME_SLIP("slip in the surname"),
    GIVEN_SLIP("slip in the given name"),
    EXCHANGED("names exchanged"),
    NO_BIRTH_DATE("birth date missing"),
    DAY_SLIP("wrong digit in the day or month"),
    YEAR_SLIP("wrong digit in the year"),
    DAY_FOR_MONTH("day and month exchanged"),
    NO_LAST4("last four missing on the envelope"),
    LAST4_SLIP("wrong digit in the last four"),
    LAST4_OTHER("other last four"),
    ADDRESS_SLIP("slip in the address"),
    TWIN_TOO("voter whose twin is a voter"),
    NAME_TOO("voter with a parent's or child's name"),
    CLEAN("nothing of these"),
    STRANGER("not on the roll: a stranger"),
    TWIN("not on the roll: a voter's twin"),
    CHILD_NAMED("not on the roll: a child with a parent's name"),
    CHILD("not on the roll: a child at the address"),
    NAMESAKE("not on the roll: same name, other birth date");

    private final String words;

    Kind(String words) {
        this.words = words;
    }

    boolean isOffRoll() {
        return compareTo(STRANGER) >= 0;
    }

    String words() {
        return words;
    }
}
