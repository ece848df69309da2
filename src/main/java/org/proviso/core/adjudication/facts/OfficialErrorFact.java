package org.proviso.core.adjudication.facts;

/** Whether an official's own note says that an official caused the fault. */
public enum OfficialErrorFact implements FactWord {
    NOT_NOTED("no official error noted"),
    NOTED("a poll worker noted an official error");

    private final String meaning;

    OfficialErrorFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
