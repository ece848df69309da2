package org.proviso.core.adjudication.facts;

/** A court's order about this envelope. */
public enum OrderFact implements FactWord {
    NONE("no order"),
    COUNT("ordered counted"),
    REJECT("ordered rejected"),
    HOLD("ordered held"),
    PRESERVE("ordered preserved"),
    OPEN("ordered opened");

    private final String meaning;

    OrderFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
