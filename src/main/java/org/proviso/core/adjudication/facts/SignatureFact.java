package org.proviso.core.adjudication.facts;

/** How the affirmation is signed by the voter. */
public enum SignatureFact implements FactWord {
    SIGNED("signed"),
    MISSING("not signed"),
    MARK_WITNESSED("signed by a mark, with a witness"),
    MARK_NOT_WITNESSED("signed by a mark, without a witness"),
    POWER_OF_ATTORNEY("signed by somebody else under a power of attorney"),
    SIGNED_LATER_IN_TIME("signed afterward, in time"),
    SIGNED_LATER_LATE("signed afterward, too late");

    private final String meaning;

    SignatureFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
