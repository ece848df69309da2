package org.proviso.review;

import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.adjudication.facts.Registration;

/** What a search for a voter came to. */
public enum SearchFound implements Code {
    NOTHING("no record found", Registration.NOT_FOUND_AFTER_SEARCH),
    RECORD("a record on the roll; link the envelope to it", null),
    OTHER_COUNTY("a registration in another county in the state", Registration.ELSEWHERE),
    PENDING("an unfinished application", Registration.PENDING),
    CANCELLED("a registration cancelled before the election", Registration.CANCELLED);

    private final String words;
    private final @Nullable Registration registration;

    SearchFound(String words, @Nullable Registration registration) {
        this.words = words;
        this.registration = registration;
    }

    public String words() {
        return words;
    }

    /** Where the registration stands by this search; null where the record itself tells. */
    @Nullable
    Registration registration() {
        return registration;
    }
}
