package org.proviso.core.adjudication.facts;

/** Which contests the registration entitles to. */
public enum EntitlementFact implements FactWord {
    FULL("all contests of the voter's style"),
    FEDERAL_ONLY("contests for federal office only");

    private final String meaning;

    EntitlementFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
