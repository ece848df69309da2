package org.proviso.intake.desk;

/** Which envelopes a list shows. */
public enum EnvelopeFilter {
    NOT_KEYED("Not keyed"),
    KEYED_ONCE("Keyed once"),
    DIFFERING("Keyings differ"),
    ALL("All");

    private final String words;

    EnvelopeFilter(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
