package org.proviso.core.adjudication.facts;

/** Whether the state lists the voter as having voted in another county. */
public enum OtherCountyFact implements FactWord {
    NOT_LISTED("not on the state's list"),
    LISTED("an entry on the state's list resembles the voter; not confirmed yet"),
    LISTED_IN_FULL("an entry on the state's list has the same name, date of birth and number; not confirmed yet"),
    VOTED("a reviewer confirmed that the entry is this voter"),
    NOT_THEIRS("a reviewer found that the entry is another person");

    private final String meaning;

    OtherCountyFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
