package org.proviso.core.adjudication.facts;

/** What poll books elsewhere say of the voter. */
public enum CheckInFact implements FactWord {
    NONE("no check-in with a regular ballot issued"),
    ELSEWHERE_UNSEEN("a check-in with a ballot issued; the poll-book signature has not been checked yet"),
    VOTED("a reviewer saw the voter's signature in the poll book"),
    NOT_THEIRS("a reviewer checked the poll book: the check-in is not this voter's");

    private final String meaning;

    CheckInFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
