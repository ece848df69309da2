package org.proviso.core.adjudication.facts;

/** Whether the voter cast late and swore why their own place was out of reach, where the law excuses that. */
public enum LateExcuseFact implements FactWord {
    NOT_SWORN("cast before the time set by law, or no reason was sworn"),
    SWORN("cast at or after that time, with a sworn reason");

    private final String meaning;

    LateExcuseFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
