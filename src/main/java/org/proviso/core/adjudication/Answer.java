package org.proviso.core.adjudication;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.rules.Consequence;
import org.proviso.core.rules.Given;
import org.proviso.core.rules.Reason;

/** What the facts say to one question of the law. Each answer names the rules it rests on. */
public sealed interface Answer {

    /** The answer in a few words, as it stands at the end of the question's line. */
    String words();

    List<Given> restsOn();

    /** Nothing stands in the way. */
    record Clear(String words, List<Given> restsOn) implements Answer {}

    /**
     * Something stands in the way: its reason, what follows, and how the ask stands that could cure it (null where
     * nothing cures it).
     */
    record Defect(
            Reason reason,
            Consequence consequence,
            @Nullable AskClock ask,
            List<Given> restsOn) implements Answer {

        @Override
        public String words() {
            return "Defect: " + reason.words();
        }

        /** Nothing can cure it, or the time to do so ran out. */
        public boolean isFinal() {
            return ask == null || ask == AskClock.OVER;
        }
    }

    /**
     * Nobody can say yet: what is missing, and what the records suggest it will turn out to be. The expectation serves
     * the outlook only and is null where the records suggest nothing; a decision never rests on it.
     */
    record Open(String missing, @Nullable Answer expected, List<Given> restsOn) implements Answer {
        @Override
        public String words() {
            return "Open: " + missing;
        }
    }

    /** The question makes no sense here. */
    record NotAsked(String why) implements Answer {
        @Override
        public String words() {
            return "Not asked: " + why;
        }

        @Override
        public List<Given> restsOn() {
            return List.of();
        }
    }
}
