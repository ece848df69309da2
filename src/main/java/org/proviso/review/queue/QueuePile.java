package org.proviso.review.queue;

import org.proviso.core.Code;

/** Whether an office hand is wanted on a case now, or who has to answer before work on it goes on. */
public enum QueuePile implements Code {
    TO_DO("To do"),
    VOTER("Waiting for the voter"),
    COLLEAGUE("Waiting for a colleague"),
    ANOTHER_OFFICE("Waiting for another office");

    private final String words;

    QueuePile(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
