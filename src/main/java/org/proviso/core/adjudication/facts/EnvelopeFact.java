package org.proviso.core.adjudication.facts;

/** In what condition the envelope came; what is inside is known only at opening. */
public enum EnvelopeFact implements FactWord {
    SEALED("sealed"),
    UNSEALED("not sealed"),
    TORN("torn"),
    FEELS_EMPTY("sealed, and feels empty"),
    WITHDRAWN("withdrawn by the voter"),
    SPOILED("spoiled and replaced"),
    REGULAR_BALLOT_INSIDE("contains a regular ballot by mistake");

    private final String meaning;

    EnvelopeFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
