package org.proviso.core.adjudication.facts;

/** Whether the state lists the voter as having voted in another county. */
public enum OtherCountyFact implements FactWord {
    NOT_LISTED("not on the list"),
    LISTED("a line of the list resembles the voter; nobody has confirmed it yet"),
    LISTED_IN_FULL("a line of the list agrees in name, birth date and number; nobody has confirmed it yet"),
    VOTED("a person confirmed that the line is this voter"),
    NOT_THEIRS("a person found that the line is somebody else");

    private final String meaning;

    OtherCountyFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
