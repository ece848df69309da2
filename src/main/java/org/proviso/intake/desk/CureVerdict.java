package org.proviso.intake.desk;

import java.util.List;

/** Whether evidence came in time and is enough, and what the voter still owes, each a sentence. */
public record CureVerdict(Kind kind, String because, List<String> owed) {

    /** The verdict in the words that stand largest on the page. */
    public enum Kind {
        IN_TIME("In time"),
        TOO_LATE("Too late"),
        NOT_ENOUGH("Not enough"),
        NO_DEADLINE("No deadline known");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
