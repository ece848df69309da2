package org.proviso.core.adjudication.facts;

/** Whether this voter has another provisional envelope. */
public enum OtherEnvelopeFact implements FactWord {
    NONE("no other envelope of this voter"),
    LATER_PENDING("another one, cast later, is not yet decided"),
    EARLIER_PENDING("another one, cast earlier, is not yet decided"),
    COUNTED("another one counts"),
    NOT_COUNTED("another one was decided and does not count");

    private final String meaning;

    OtherEnvelopeFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
