package org.proviso.core.adjudication.explain;

import org.proviso.core.adjudication.judging.Recommendation;

/** The marks of the three outcomes, always beside the word: a full disc, a half disc, an empty ring. */
public final class OutcomeSymbol {

    private OutcomeSymbol() {}

    /** {@code ● count}; outcomes that are not decisions on the vote have no mark. */
    public static String beside(Recommendation recommendation) {
        return switch (recommendation) {
            case COUNT -> "\u25CF count";
            case COUNT_IN_PART -> "\u25D0 count in part";
            case REJECT -> "\u25CB reject";
            default -> recommendation.words();
        };
    }
}
