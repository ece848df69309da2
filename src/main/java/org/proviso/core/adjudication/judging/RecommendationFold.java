package org.proviso.core.adjudication.judging;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToIntFunction;
import org.jspecify.annotations.Nullable;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.contests.BallotContests;
import org.proviso.core.contests.ContestPolicy;
import org.proviso.core.rules.Consequence.Effect;
import org.proviso.core.rules.Reason;

/**
 * Folds the answers to all questions into one recommendation. The order is fixed: an administrative end; sent on; a
 * rejecting defect that nothing can cure any more; anything open; a defect whose ask still runs; a part; all of it.
 */
public final class RecommendationFold {

    private final Collection<? extends Answer> answers;
    private final @Nullable BallotContests contests;

    private RecommendationFold(Collection<? extends Answer> answers, @Nullable BallotContests contests) {
        this.answers = answers;
        this.contests = contests;
    }

    /** Folds; {@code precedence} tells which of several reasons is named first. */
    public static AssessmentOutcome fold(
            Collection<? extends Answer> answers, @Nullable BallotContests contests, ToIntFunction<Reason> precedence) {
        RecommendationFold fold = new RecommendationFold(answers, contests);

        Recommendation recommendation = fold.recommendation();
        Set<String> counted = contests != null && recommendation == Recommendation.COUNT_IN_PART
                ? contests.countedUnder(fold.policies())
                : Set.of();
        return new AssessmentOutcome(
                recommendation,
                fold.reasons().stream()
                        .sorted(Comparator.comparingInt(precedence))
                        .toList(),
                counted);
    }

    private Set<Reason> reasons() {
        Set<Reason> reasons = new LinkedHashSet<>();
        for (Answer.Defect defect : defects()) {
            if (defect.consequence().does() != Effect.NONE) {
                reasons.add(defect.reason());
            }
        }
        if (nothingLeft()) {
            reasons.add(Reason.NO_CONTEST_IN_COMMON);
        }
        return reasons;
    }

    private Recommendation recommendation() {
        if (any(Effect.ADMINISTRATIVE_END)) {
            return Recommendation.ADMINISTRATIVE_END;
        }
        if (any(Effect.SENT_ON)) {
            return Recommendation.SENT_ON;
        }
        if (rejectedForGood() || nothingLeft()) {
            return Recommendation.REJECT;
        }
        if (answers.stream().anyMatch(Answer.Open.class::isInstance) || partOfUnknown()) {
            return Recommendation.RESEARCH;
        }
        return defects().stream().allMatch(RecommendationFold::isSettled)
                ? wholeOrPart()
                : Recommendation.WAIT_FOR_THE_VOTER;
    }

    private Recommendation wholeOrPart() {
        boolean part = contests != null
                && !policies().isEmpty()
                && contests.countedUnder(policies()).size() < contests.cast().size();
        return part ? Recommendation.COUNT_IN_PART : Recommendation.COUNT;
    }

    private boolean rejectedForGood() {
        return defects().stream().anyMatch(defect -> defect.consequence().does() == Effect.REJECT && defect.isFinal());
    }

    private static boolean isSettled(Answer.Defect defect) {
        return !defect.consequence().costsTheVoter() || defect.isFinal();
    }

    /** Only a part counts, and none of the contests on the ballot is in it: found before any wait. */
    private boolean nothingLeft() {
        return contests != null
                && !policies().isEmpty()
                && contests.countedUnder(policies()).isEmpty();
    }

    /** Only a part counts, but it is not known yet which ballot was the right one. */
    private boolean partOfUnknown() {
        return contests == null && !policies().isEmpty();
    }

    private Set<ContestPolicy> policies() {
        Set<ContestPolicy> policies = new LinkedHashSet<>();
        defects().stream()
                .filter(defect -> defect.consequence().does() == Effect.IN_PART)
                .forEach(defect -> policies.add(defect.consequence().policy()));
        return policies;
    }

    private boolean any(Effect does) {
        return defects().stream().anyMatch(defect -> defect.consequence().does() == does);
    }

    private List<Answer.Defect> defects() {
        List<Answer.Defect> defects = new ArrayList<>();
        for (Answer answer : answers) {
            if (answer instanceof Answer.Defect defect) {
                defects.add(defect);
            }
        }
        return defects;
    }
}
