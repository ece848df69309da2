package org.proviso.core.adjudication.facts;

/** Whether the voter cast late and swore why their own place was out of reach, where the law excuses that. */
public enum LateExcuseFact implements FactWord {
    NOT_SWORN("cast before the hour that the law names, or no reason was sworn"),
    SWORN("cast from that hour on, with a sworn reason");

    private final String meaning;

    LateExcuseFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
