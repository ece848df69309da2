package org.proviso.review.queue;

import org.proviso.core.Code;

/** What a list of cases can be narrowed by. Its code is the name in an address and in a saved view. */
public enum QueueColumn implements Code {
    PILE("Pile"),
    STATE("State"),
    OUTLOOK("Outlook"),
    REASON("Reason issued"),
    LOCATION("Voting location"),
    PRECINCT("Precinct"),
    HOLDER("Assigned to"),
    LANGUAGE("Language"),
    AGE("No act for");

    private final String words;

    QueueColumn(String words) {
        this.words = words;
    }

    /** As it stands over its field and its column. */
    public String words() {
        return words;
    }
}
