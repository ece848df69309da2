package org.proviso.core;

/** A person's name as written; a part that was not given is the empty string. */
public record PersonName(String last, String first, String middle, String suffix) {

    /** Surname first, as a list reads: {@code Oyelaran, Catherine Marie Jr}. */
    public String listed() {
        StringBuilder text = new StringBuilder(last);
        String given = (first + " " + middle).strip();
        if (!given.isEmpty()) {
            text.append(text.isEmpty() ? "" : ", ").append(given);
        }
        if (!suffix.isEmpty()) {
            text.append(' ').append(suffix);
        }
        return text.toString();
    }
}
