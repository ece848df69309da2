package org.proviso.core.adjudication.facts;

/** Whose envelope it is: the pairing of the envelope with a record of the roll. */
public enum VoterIdentityFact implements FactWord {
    CONFIRMED("a person confirmed the link to a record of the roll"),
    PRESUMED("one record fits almost surely; nobody has confirmed it yet"),
    ONE_FITS_WELL("one record fits well, but not surely"),
    SEVERAL_FIT("one or more records may be this voter; the papers do not tell"),
    NONE_FITS("no record of the roll fits; nobody has searched yet"),
    NOT_ON_ROLL("a person searched by the check list and found no record");

    private final String meaning;

    VoterIdentityFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
