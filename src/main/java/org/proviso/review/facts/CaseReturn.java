package org.proviso.review.facts;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.UserName;

/** Why a case came back to the reviewers, in the words typed, and when (UTC). By nobody where the program did it. */
public record CaseReturn(
        Kind kind, String because, @Nullable UserName returnedBy, Instant returnedAt) {

    /** In which way it came back. */
    public enum Kind implements Code {
        SENT_BACK("Sent back by the decider"),
        /** Kept with the second review, not with the other returns. */
        SECOND_READER("Sent back by the second reviewer"),
        REOPENED("Reopened"),
        RECALLED("Came back: a newer record or a deadline changed what the rules say"),
        RELEASED("Released for another reviewer"),
        TIMED_OUT("Released: nobody worked on it");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** As it reads before who did it and when. */
        public String words() {
            return words;
        }
    }
}
