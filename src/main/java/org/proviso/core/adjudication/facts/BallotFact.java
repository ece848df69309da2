package org.proviso.core.adjudication.facts;

/** Whether the ballot cast is of a style this voter may vote. */
public enum BallotFact implements FactWord {
    RIGHT_STYLE("a style the voter may vote"),
    OTHER_STYLE("another style of this county");

    private final String meaning;

    BallotFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
