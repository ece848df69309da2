package org.proviso.core.adjudication.facts;

/** Where the voter's registration stands for this election. */
public enum RegistrationFact implements FactWord {
    IN_TIME("registered, and the event the law tests was on time"),
    INACTIVE("registered and inactive: an address notice went unanswered"),
    LATE("registered after the deadline of its channel"),
    SAME_DAY_ACCEPTED("registered on the day, and the registration was accepted"),
    SAME_DAY_PENDING("registered on the day; the registration is not yet accepted"),
    PENDING("applied in time; something in the application is not finished"),
    PENDING_VERIFIED_IN_TIME("pending on election day; what was missing was verified in time"),
    PENDING_VERIFIED_LATE("pending on election day; what was missing was not verified in time"),
    CANCELLED("the registration was cancelled before the election"),
    ELSEWHERE("registered in another county of the state"),
    NOT_IN_FILE("no record in the file loaded: open until a person has searched"),
    NOT_FOUND_AFTER_SEARCH("a person searched cancelled, pending, agency and other-county records and former names"),
    PROVED_INSTEAD("no record was found; identity and residence were proved in time"),
    NONE_NEEDED("the law asks for no registration");

    private final String meaning;

    RegistrationFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
