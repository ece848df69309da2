package org.proviso.core.adjudication.facts;

/** How the affirmation is signed by the voter. */
public enum SignatureFact implements FactWord {
    SIGNED("signed"),
    MISSING("not signed"),
    MARK_WITNESSED("signed with a mark, witnessed"),
    MARK_NOT_WITNESSED("signed with a mark, not witnessed"),
    POWER_OF_ATTORNEY("signed by another person under a power of attorney"),
    SIGNED_LATER_IN_TIME("signed after voting, in time"),
    SIGNED_LATER_LATE("signed after voting, too late");

    private final String meaning;

    SignatureFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
