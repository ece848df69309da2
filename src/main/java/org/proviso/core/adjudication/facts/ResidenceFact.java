package org.proviso.core.adjudication.facts;

/** The location of the address on the affirmation. */
public enum ResidenceFact implements FactWord {
    IN_COUNTY("the street file has the address"),
    OUT_OF_COUNTY("the address is not in this county");

    private final String meaning;

    ResidenceFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
