package org.proviso.core.adjudication.facts;

/** A court's order about this envelope. */
public enum OrderFact implements FactWord {
    NONE("no order"),
    COUNT("ordered to be counted"),
    REJECT("ordered to be rejected"),
    HOLD("ordered to be held"),
    PRESERVE("ordered to be preserved"),
    OPEN("ordered to be opened");

    private final String meaning;

    OrderFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
