package org.proviso.core.adjudication.facts;

/** Whether this voter has another provisional envelope. */
public enum OtherEnvelopeFact implements FactWord {
    NONE("no other envelope of this voter"),
    LATER_PENDING("another envelope, cast later, is not decided yet"),
    EARLIER_PENDING("another envelope, cast earlier, is not decided yet"),
    COUNTED("another envelope counts"),
    NOT_COUNTED("another envelope was decided and does not count");

    private final String meaning;

    OtherEnvelopeFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
