package org.proviso.review.replay;

/** A column of a table of cases, and how the ledger says what stands in it. */
record CaseColumn(String name, Kind kind) {

    /** How the text of a column stands in the ledger. */
    enum Kind {
        /** As it is. */
        PLAIN,
        /** Codes joined by semicolons, in any order. */
        WORDS,
        /** Yes or no. */
        YES_NO,
        /** Whether there is anything in it. */
        GIVEN,
        /** A moment on the county's clock. */
        STAMP,
        /** A salted hash of it. */
        HIDDEN,
        /** As it is, or as a salted hash where it is the name of a court's order. */
        REFERENCE,
        /** The pseudonym of the user of that name. */
        PERSON
    }

    static CaseColumn plain(String name) {
        return new CaseColumn(name, Kind.PLAIN);
    }

    static CaseColumn words(String name) {
        return new CaseColumn(name, Kind.WORDS);
    }

    static CaseColumn hidden(String name) {
        return new CaseColumn(name, Kind.HIDDEN);
    }

    static CaseColumn person(String name) {
        return new CaseColumn(name, Kind.PERSON);
    }

    static CaseColumn of(String name, Kind kind) {
        return new CaseColumn(name, kind);
    }

    /** As it is said in a sentence. */
    String spoken() {
        return name.replace('_', ' ');
    }
}
