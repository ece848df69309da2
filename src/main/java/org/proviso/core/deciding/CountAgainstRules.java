package org.proviso.core.deciding;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.judging.Recommendation;

/**
 * Counting more of a ballot than the rules do, or counting it although a record says that the voter has voted already: what
 * the rules recommend instead. Nobody does that by accident: it takes the place in the law and a reason, and where a
 * reviewer proposes it a second reader.
 */
public record CountAgainstRules(Recommendation rulesSay, boolean knownToHaveVoted) {

    private static final Set<Recommendation> NOT_COUNTED =
            EnumSet.of(Recommendation.REJECT, Recommendation.SENT_ON, Recommendation.ADMINISTRATIVE_END);

    /** Empty where the outcome follows the rules, counts less than they do, or they have no answer yet. */
    public static Optional<CountAgainstRules> of(
            DecisionOutcome as, Recommendation rulesSay, boolean knownToHaveVoted) {
        boolean counts = as != DecisionOutcome.REJECT;
        boolean more = NOT_COUNTED.contains(rulesSay)
                || (as == DecisionOutcome.COUNT && rulesSay == Recommendation.COUNT_IN_PART);
        return counts && (more || knownToHaveVoted)
                ? Optional.of(new CountAgainstRules(rulesSay, knownToHaveVoted))
                : Optional.empty();
    }

    /** The same of a case as it is assessed; contests that the rules do not count are more than they count. */
    public static Optional<CountAgainstRules> of(DecisionOutcome as, Set<String> contests, Assessment settled) {
        Recommendation rulesSay = settled.outcome().recommendation();
        boolean knownToHaveVoted = DecisionChecks.isKnownToHaveVoted(settled.answered());
        Optional<CountAgainstRules> against = of(as, rulesSay, knownToHaveVoted);
        boolean moreContests = as == DecisionOutcome.COUNT_IN_PART
                && rulesSay == Recommendation.COUNT_IN_PART
                && !settled.outcome().contests().containsAll(contests);
        return against.isEmpty() && moreContests
                ? Optional.of(new CountAgainstRules(rulesSay, knownToHaveVoted))
                : against;
    }

    /** In sentences, for a page, the minutes and a refusal. */
    public String words() {
        String voted = knownToHaveVoted ? "Records show that the voter already voted." : "";
        String answer = rulesSay == Recommendation.COUNT
                ? ""
                : "This goes against the rules' answer, which is: " + rulesSay.words() + ".";
        return (answer + " " + voted).strip();
    }
}
