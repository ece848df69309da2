package org.proviso.core.adjudication.facts;

/** What became of a field of the affirmation. */
public enum FieldFact implements FactWord {
    KEYED("keyed"),
    LEFT_BLANK("left blank by the voter"),
    ILLEGIBLE("illegible"),
    REFUSED("the voter refused to provide it"),
    NOT_YET_KEYED("not keyed yet"),
    NOT_A_DATE("written, but not a date");

    private final String meaning;

    FieldFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
