package org.proviso.core.adjudication.facts;

/** Whether somebody challenged the voter. */
public enum ChallengeFact implements FactWord {
    NONE("no challenge"),
    PENDING("challenged, not yet decided"),
    SUSTAINED("challenged, and sustained"),
    OVERRULED("challenged, and overruled"),
    UNDER_APPEAL("decided, and under appeal");

    private final String meaning;

    ChallengeFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
