package org.proviso.core.adjudication.questions;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.rules.Consequence;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.ResolvedRule;

/** What the facts say to one question of the law. Each answer names the rules it rests on. */
public sealed interface Answer {

    /** The answer in a few words, as it stands at the end of the question's line. */
    String words();

    List<ResolvedRule> restsOn();

    /** Nothing stands in the way. */
    record Clear(String words, List<ResolvedRule> restsOn) implements Answer {}

    /**
     * Something stands in the way: its reason, what follows, and how the ask stands that could cure it (null where
     * nothing cures it).
     */
    record Defect(
            Reason reason,
            Consequence consequence,
            @Nullable AskStatus ask,
            List<ResolvedRule> restsOn) implements Answer {

        @Override
        public String words() {
            return "Defect: " + reason.words();
        }

        /** Nothing can cure it, or the time to do so ran out. */
        public boolean isFinal() {
            return ask == null || ask == AskStatus.OVER;
        }
    }

    /**
     * Nobody can say yet: what is missing, and what the records suggest it will turn out to be. The expectation serves
     * the outlook only and is null where the records suggest nothing; a decision never rests on it.
     */
    record Open(String missing, @Nullable Answer expected, List<ResolvedRule> restsOn) implements Answer {
        @Override
        public String words() {
            return "Open: " + missing;
        }
    }

    /** The question does not apply here. */
    record NotAsked(String why) implements Answer {
        @Override
        public String words() {
            return "Not asked: " + why;
        }

        @Override
        public List<ResolvedRule> restsOn() {
            return List.of();
        }
    }
}
