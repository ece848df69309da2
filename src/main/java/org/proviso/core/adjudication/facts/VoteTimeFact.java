package org.proviso.core.adjudication.facts;

/** When the ballot was cast, against the hours of the polls. */
public enum VoteTimeFact implements FactWord {
    WITHIN_HOURS("while the polls were open"),
    IN_LINE_AT_CLOSE("after the close, by a voter already in line then"),
    EXTENDED_PENDING("in hours extended by an order that is still disputed"),
    EXTENDED_IN_FORCE("in hours extended by an order in force"),
    EXTENDED_SET_ASIDE("in hours extended by an order since set aside"),
    EXTENDED_FINAL("in hours extended by an order that is final"),
    AFTER_CLOSE("after the close, with no order for it");

    private final String meaning;

    VoteTimeFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
