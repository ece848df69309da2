package org.proviso.review.counts;

import java.util.Map;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.review.CaseState;

/**
 * The cases of an election in numbers: how many stand in each state, how the standing decisions settled theirs, how many
 * whoever looks has in review, and how many proposals wait for a second reader other than whoever looks.
 */
public record CaseCounts(
        Map<CaseState, Integer> states, Map<DecisionOutcome, Integer> decided, int withYou, int forYouToReadSecond) {

    public int in(CaseState state) {
        return states.getOrDefault(state, 0);
    }

    public int as(DecisionOutcome outcome) {
        return decided.getOrDefault(outcome, 0);
    }

    /** Every envelope that has a case. */
    public int all() {
        return states.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Count, count in part or reject was decided, opened since or not. */
    public int settled() {
        return decided.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Neither decided nor ended without a decision. */
    public int toGo() {
        return all() - settled() - in(CaseState.SENT_ON) - in(CaseState.ENDED);
    }
}
