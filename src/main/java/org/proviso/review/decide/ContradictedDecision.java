package org.proviso.review.decide;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseState;

/**
 * A settled case of which the rules say something else now than when it was settled: how it was decided and under which
 * number (both null where it was sent on), what the rules say now, in which assessment, and what newer record made the
 * difference, in words (empty where it was no newer list, but another envelope or an answer).
 */
public record ContradictedDecision(
        EnvelopeKey key,
        CaseState state,
        int version,
        @Nullable Integer decision,
        @Nullable DecisionOutcome decidedAs,
        @Nullable String decider,
        Recommendation says,
        List<Reason> reasons,
        int assessment,
        String because) {

    /** What was done with the envelope, as the office says it: {@code decided to count}. */
    public String wasSettled() {
        if (decidedAs == null) {
            return "sent on";
        }
        return state == CaseState.RELEASED ? "opened and counted" : "decided to " + decidedAs.words();
    }

    /** What the rules say now, with the reasons. */
    public String saysNow() {
        return said(says, reasons);
    }

    static String said(Recommendation says, List<Reason> reasons) {
        return reasons.isEmpty()
                ? says.words()
                : says.words() + ": " + reasons.stream().map(Reason::words).collect(Collectors.joining("; "));
    }

    /** Whether the envelope is still closed and was to be counted: it must not be opened before this is settled. */
    public boolean mustStayClosed() {
        return state == CaseState.DECIDED && decidedAs != null && decidedAs != DecisionOutcome.REJECT;
    }

    /** Whether the decider can still vote on it: it is closed, and no court ordered how it is settled. */
    public boolean isTheDeciders() {
        return state == CaseState.DECIDED && !isOrdered();
    }

    private boolean isOrdered() {
        return "court".equals(decider);
    }

    /** What a court ordered is contradicted only by a record of another vote, never by how the rules would judge it. */
    boolean counts() {
        return !isOrdered() || reasons.stream().anyMatch(Reason::isOfAnotherVote);
    }
}
