package org.proviso.core.adjudication.facts;

/** When the ballot was cast, against the hours of the polls. */
public enum VoteTimeFact implements FactWord {
    WITHIN_HOURS("cast while the polls were open"),
    IN_LINE_AT_CLOSE("cast after polls closed, by a voter already in line"),
    EXTENDED_PENDING("cast in hours extended by a court order still in dispute"),
    EXTENDED_IN_FORCE("cast in hours extended by a court order in force"),
    EXTENDED_SET_ASIDE("cast in hours extended by a court order since set aside"),
    EXTENDED_FINAL("cast in hours extended by a final court order"),
    AFTER_CLOSE("cast after polls closed, with no court order");

    private final String meaning;

    VoteTimeFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
