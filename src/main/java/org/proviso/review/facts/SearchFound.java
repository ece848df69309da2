package org.proviso.review.facts;

import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.adjudication.facts.RegistrationFact;

/** What a search for a voter came to. */
public enum SearchFound implements Code {
    NOTHING("no record found", RegistrationFact.NOT_FOUND_AFTER_SEARCH),
    RECORD("a record on the roll; link the envelope to it", null),
    OTHER_COUNTY("a registration in another county in the state", RegistrationFact.ELSEWHERE),
    PENDING("an unfinished application", RegistrationFact.PENDING),
    CANCELLED("a registration cancelled before the election", RegistrationFact.CANCELLED);

    private final String words;
    private final @Nullable RegistrationFact registration;

    SearchFound(String words, @Nullable RegistrationFact registration) {
        this.words = words;
        this.registration = registration;
    }

    public String words() {
        return words;
    }

    /** Where the registration stands by this search; null where the record itself tells. */
    @Nullable
    RegistrationFact registration() {
        return registration;
    }
}
