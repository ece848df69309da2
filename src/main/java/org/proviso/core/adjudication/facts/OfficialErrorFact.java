package org.proviso.core.adjudication.facts;

/** Whether an official's own note says that an official caused the fault. */
public enum OfficialErrorFact implements FactWord {
    NOT_NOTED("no such note"),
    NOTED("the official noted it");

    private final String meaning;

    OfficialErrorFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
