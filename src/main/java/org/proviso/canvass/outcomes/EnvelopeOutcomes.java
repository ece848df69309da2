package org.proviso.canvass.outcomes;

import java.util.Map;
import org.proviso.core.adjudication.explain.OutcomeSymbol;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.rules.Reason;

/**
 * Where the envelopes of an election went: by the first reason of issue, in words, to their outcome so far; and the
 * rejected ballots by their first reason.
 */
public record EnvelopeOutcomes(Map<String, Map<End, Integer>> byIssueReason, Map<Reason, Integer> rejections) {

    /** What became of an envelope. */
    public enum End {
        COUNTED(OutcomeSymbol.beside(Recommendation.COUNT)),
        IN_PART(OutcomeSymbol.beside(Recommendation.COUNT_IN_PART)),
        REJECTED(OutcomeSymbol.beside(Recommendation.REJECT)),
        SENT_ON("sent on"),
        ENDED("ended without a decision"),
        NOT_YET("not decided yet");

        private final String beside;

        End(String beside) {
            this.beside = beside;
        }

        /** The word with its mark, where it has one. */
        public String beside() {
            return beside;
        }
    }
}
