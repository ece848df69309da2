package org.proviso.core.adjudication.facts;

/** Whether the poll official attested the affirmation. */
public enum OfficialSignatureFact implements FactWord {
    SIGNED("signed by the poll worker"),
    MISSING("not signed by the poll worker");

    private final String meaning;

    OfficialSignatureFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
