package org.proviso.core.adjudication.facts;

/** Whether the party ballot is one the voter may vote. */
public enum PartyBallotFact implements FactWord {
    NONE("no party ballots in this election, or a ballot open to all"),
    OWN("a ballot of the voter's party, or one open to the voter"),
    OTHER("a ballot of a party not open to the voter");

    private final String meaning;

    PartyBallotFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
