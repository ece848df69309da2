package org.proviso.core.adjudication.facts;

/** Where the address on the affirmation lies. */
public enum ResidenceFact implements FactWord {
    IN_COUNTY("the street file has the address"),
    OUT_OF_COUNTY("the place is not one of this county's");

    private final String meaning;

    ResidenceFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
