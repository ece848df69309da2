package org.proviso.core.adjudication.facts;

/** Whether the voter was challenged. */
public enum ChallengeFact implements FactWord {
    NONE("no challenge"),
    PENDING("challenged, not yet decided"),
    SUSTAINED("challenged; the challenge was sustained"),
    OVERRULED("challenged; the challenge was overruled"),
    UNDER_APPEAL("the ruling on the challenge is under appeal");

    private final String meaning;

    ChallengeFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
