package org.proviso.core.adjudication.facts;

/** What poll books elsewhere say of the voter. */
public enum CheckInFact implements FactWord {
    NONE("no check-in that gave a regular ballot"),
    ELSEWHERE_UNSEEN("a check-in with a ballot issued; nobody has seen the poll-book signature yet"),
    VOTED("a person saw the voter's signature in the poll book"),
    NOT_THEIRS("a person saw the poll book: the check-in is not this voter's");

    private final String meaning;

    CheckInFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
