package org.proviso.review.facts;

import org.proviso.core.Code;

/** The check list of a search: every place is looked in before anybody is said not to be registered. */
public enum SearchPlace implements Code {
    CANCELLED("cancelled registrations"),
    PENDING("unfinished applications"),
    AGENCY("motor-vehicle and other agency records"),
    OTHER_COUNTY("the state's list of other counties"),
    FORMER_NAME("former names");

    private final String words;

    SearchPlace(String words) {
        this.words = words;
    }

    /** As the check list has it. */
    public String words() {
        return words;
    }
}
