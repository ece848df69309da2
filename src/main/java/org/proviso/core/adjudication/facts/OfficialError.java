package org.proviso.core.adjudication.facts;

/** Whether an official's own note says that an official caused the fault. */
public enum OfficialError implements FactWord {
    NOT_NOTED("no official error noted"),
    NOTED("a poll worker noted an official error");

    private final String meaning;

    OfficialError(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
