package org.proviso.review;

import org.jspecify.annotations.Nullable;

/**
 * Where the case of one envelope stands: the person it was found to be of (null until a person settled it), that person
 * again while a decision to count stands, and who has the case now. An act carries the version it was seen in.
 */
public record EnvelopeCase(
        CaseKey key,
        CaseState state,
        @Nullable String personId,
        @Nullable String countedPerson,
        @Nullable String takenBy,
        int version) {

    /** Whether this person has the case. */
    boolean isWith(String userName) {
        return userName.equals(takenBy);
    }
}
