package org.proviso.core.adjudication.facts;

/** Whose envelope it is: the pairing of the envelope with a record of the roll. */
public enum VoterIdentityFact implements FactWord {
    CONFIRMED("a reviewer confirmed the link to a roll record"),
    PRESUMED("one record almost certainly matches; not confirmed yet"),
    ONE_FITS_WELL("one record is a likely match, but not certain"),
    SEVERAL_FIT("one or more records may be this voter; the papers do not settle it"),
    NONE_FITS("no roll record matches; no search has been recorded yet"),
    NOT_ON_ROLL("a reviewer completed the search checklist and found no record");

    private final String meaning;

    VoterIdentityFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
