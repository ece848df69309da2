package org.proviso.core.deciding;

import org.proviso.core.Code;
import org.proviso.core.adjudication.judging.Recommendation;

/** How a decision settles an envelope. */
public enum DecisionOutcome implements Code {
    COUNT(Recommendation.COUNT),
    COUNT_IN_PART(Recommendation.COUNT_IN_PART),
    REJECT(Recommendation.REJECT);

    private final Recommendation recommendation;

    DecisionOutcome(Recommendation recommendation) {
        this.recommendation = recommendation;
    }

    /** The recommendation that says the same. */
    public Recommendation recommendation() {
        return recommendation;
    }

    /** As it is written everywhere. */
    public String words() {
        return recommendation.words();
    }
}
