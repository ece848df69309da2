package org.proviso.core.adjudication.facts;

/** The status of the voter's registration for this election. */
public enum RegistrationFact implements FactWord {
    IN_TIME("registered in time"),
    INACTIVE("registered and inactive: an address confirmation notice went unanswered"),
    LATE("registered after the deadline for its method"),
    SAME_DAY_ACCEPTED("same-day registration, accepted"),
    SAME_DAY_PENDING("same-day registration, not accepted yet"),
    PENDING("applied in time; the application is incomplete"),
    PENDING_VERIFIED_IN_TIME("pending on election day; what was missing was verified in time"),
    PENDING_VERIFIED_LATE("pending on election day; what was missing was not verified in time"),
    CANCELLED("the registration was cancelled before the election"),
    ELSEWHERE("registered in another county of the state"),
    NOT_IN_FILE("no record in the loaded roll: open until a reviewer has searched"),
    NOT_FOUND_AFTER_SEARCH("a reviewer searched cancelled, pending, agency and other-county records and former names"),
    PROVED_INSTEAD("no record was found; identity and residence were proved in time"),
    NONE_NEEDED("the law requires no registration");

    private final String meaning;

    RegistrationFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
