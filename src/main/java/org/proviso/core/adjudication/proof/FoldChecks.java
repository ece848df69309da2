package org.proviso.core.adjudication.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.Fold;
import org.proviso.core.adjudication.Outcome;
import org.proviso.core.adjudication.Recommendation;
import org.proviso.core.contests.BallotContests;
import org.proviso.core.rules.Reason;

/**
 * The promises that are kept by the fold: every set of the answer classes that occur under a pack is folded, over
 * every way in which the contests of two small ballots may overlap. The fold looks at answers as a set, so this
 * covers every combination of answers there is.
 */
final class FoldChecks {

    private static final List<String> CONTESTS = List.of("federal", "state", "local");

    private final List<AnswerClass> classes;
    private final Map<String, Violation> violations = new LinkedHashMap<>();
    private long combinations;

    private FoldChecks(Set<AnswerClass> classes) {
        this.classes = List.copyOf(classes);
    }

    static FoldChecks of(Set<AnswerClass> classes) {
        FoldChecks checks = new FoldChecks(classes);
        for (BallotContests contests : overlaps()) {
            checks.allSets(contests);
        }
        return checks;
    }

    List<Violation> violations() {
        return List.copyOf(violations.values());
    }

    long combinations() {
        return combinations;
    }

    private void allSets(BallotContests contests) {
        for (int mask = 0; mask < 1 << classes.size(); mask++) {
            combinations++;
            List<AnswerClass> set = chosen(mask);
            Recommendation outcome = fold(set, contests);
            if (outcome.isDecided()) {
                neverCountsBlocked(set, outcome);
                neverWorseWithout(mask, contests, outcome);
                neverOpensAgain(mask, contests, outcome);
            }
        }
    }

    private void neverCountsBlocked(List<AnswerClass> set, Recommendation outcome) {
        boolean blocked = set.stream().anyMatch(AnswerClass::blocksCounting);
        if (blocked && outcome != Recommendation.REJECT) {
            broken("No ballot counts while an answer rejects it, waits or is open.", set, outcome);
        }
    }

    /** Taking a defect away must not make a decided outcome worse. */
    private void neverWorseWithout(int mask, BallotContests contests, Recommendation outcome) {
        for (int bit = 0; bit < classes.size(); bit++) {
            if ((mask >> bit & 1) == 1 && classes.get(bit).isDefect()) {
                Recommendation without = fold(chosen(mask & ~(1 << bit)), contests);
                if (without.isDecided() && rank(without) < rank(outcome)) {
                    broken("A defect that turns out clear never makes the outcome worse.", chosen(mask), outcome);
                }
            }
        }
    }

    /** What is open may turn out any way; a decided outcome stands, unless there is no vote left to decide here. */
    private void neverOpensAgain(int mask, BallotContests contests, Recommendation outcome) {
        for (int bit = 0; bit < classes.size(); bit++) {
            if ((mask >> bit & 1) == 1 && classes.get(bit).isOpen()) {
                for (int other = 0; other < classes.size(); other++) {
                    Recommendation turned = fold(chosen(mask & ~(1 << bit) | 1 << other), contests);
                    boolean noVoteLeft =
                            turned == Recommendation.ADMINISTRATIVE_END || turned == Recommendation.SENT_ON;
                    if (turned != outcome && !noVoteLeft) {
                        broken("What is open never changes a decided outcome.", chosen(mask), outcome);
                    }
                }
            }
        }
    }

    private void broken(String promise, List<AnswerClass> set, Recommendation outcome) {
        String names = String.join("; ", set.stream().map(AnswerClass::name).toList());
        violations.putIfAbsent(promise, new Violation(promise, "answers [" + names + "] fold to " + outcome.words()));
    }

    private List<AnswerClass> chosen(int mask) {
        List<AnswerClass> chosen = new ArrayList<>();
        for (int bit = 0; bit < classes.size(); bit++) {
            if ((mask >> bit & 1) == 1) {
                chosen.add(classes.get(bit));
            }
        }
        return chosen;
    }

    private static Recommendation fold(List<AnswerClass> set, BallotContests contests) {
        List<Answer> samples = set.stream().map(AnswerClass::sample).toList();
        Outcome outcome = Fold.of(samples, contests, Reason::ordinal);
        return outcome.recommendation();
    }

    private static int rank(Recommendation outcome) {
        return switch (outcome) {
            case REJECT -> 0;
            case COUNT_IN_PART -> 1;
            default -> 2;
        };
    }

    /** Every pair of ballots out of three contests, one of them federal. */
    private static List<BallotContests> overlaps() {
        List<BallotContests> overlaps = new ArrayList<>();
        for (int cast = 1; cast < 8; cast++) {
            for (int right = 0; right < 8; right++) {
                overlaps.add(new BallotContests(ballot(cast), ballot(right), Set.of("federal")));
            }
        }
        return overlaps;
    }

    private static Set<String> ballot(int mask) {
        Set<String> ballot = new LinkedHashSet<>();
        for (int bit = 0; bit < CONTESTS.size(); bit++) {
            if ((mask >> bit & 1) == 1) {
                ballot.add(CONTESTS.get(bit));
            }
        }
        return ballot;
    }
}
