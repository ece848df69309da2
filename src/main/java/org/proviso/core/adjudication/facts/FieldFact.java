package org.proviso.core.adjudication.facts;

/** What became of a field of the affirmation. */
public enum FieldFact implements FactWord {
    KEYED("keyed"),
    LEFT_BLANK("the voter left it blank"),
    ILLEGIBLE("nobody can read it"),
    REFUSED("the voter refused to give it"),
    NOT_YET_KEYED("not keyed yet");

    private final String meaning;

    FieldFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
