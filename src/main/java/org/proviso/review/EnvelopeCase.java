package org.proviso.review;

import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;

/**
 * Where the case of one envelope stands: the person it was found to be of (null until a person settled it), that person
 * again while a decision to count stands, and who has the case now. An act carries the version it was seen in.
 */
public record EnvelopeCase(
        EnvelopeKey key,
        CaseState state,
        @Nullable String personId,
        @Nullable String countedPerson,
        @Nullable UserName takenBy,
        int version) {

    /** Whether this person has the case. */
    public boolean isWith(UserName userName) {
        return userName.equals(takenBy);
    }

    /** The same in another state, with nobody. */
    public EnvelopeCase to(CaseState next) {
        return new EnvelopeCase(key, next, personId, countedPerson, null, version);
    }

    /** The same in another state, with this person. */
    public EnvelopeCase to(CaseState next, @Nullable UserName with) {
        return new EnvelopeCase(key, next, personId, countedPerson, with, version);
    }

    /** The same, found to be of this person (null: of nobody known). */
    public EnvelopeCase of(@Nullable String person) {
        return new EnvelopeCase(key, state, person, countedPerson, takenBy, version);
    }

    /** The same, counted for its person or not. */
    public EnvelopeCase counted(boolean counts) {
        return new EnvelopeCase(key, state, personId, counts ? personId : null, takenBy, version);
    }
}
