package org.proviso.core.adjudication.facts;

/** Where the ballot was cast, as far as the law of the state cares. */
public enum PlaceFact implements FactWord {
    OWN_PLACE("at a location that serves the voter's precinct"),
    OTHER_PLACE("at another location of the county"),
    OTHER_DISTRICT("at another location, outside the voter's congressional district");

    private final String meaning;

    PlaceFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
