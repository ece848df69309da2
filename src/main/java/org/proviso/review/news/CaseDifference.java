package org.proviso.review.news;

import java.util.List;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.review.CaseState;

/**
 * That the rules say something else of a case than before: what they said and say now, for the case as it stands and
 * for its outlook, where the case is, and what made the difference, in sentences.
 */
public record CaseDifference(
        EnvelopeKey key,
        CaseState state,
        Recommendation before,
        Recommendation after,
        Recommendation outlookBefore,
        Recommendation outlookAfter,
        List<String> because) {

    /** Whether people have settled this case already. */
    public boolean touchesDecided() {
        return state == CaseState.DECIDED || state == CaseState.RELEASED || state == CaseState.SENT_ON;
    }
}
