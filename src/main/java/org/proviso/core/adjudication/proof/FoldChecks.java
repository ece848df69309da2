package org.proviso.core.adjudication.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.proviso.core.adjudication.judging.AssessmentOutcome;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.adjudication.judging.RecommendationFold;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.contests.BallotContests;
import org.proviso.core.rules.Reason;

/**
 * The promises that are kept by the fold: every set of the answer classes that occur under a pack is folded, over
 * every way in which the contests of two small ballots may overlap. The fold looks at answers as a set, so this
 * covers every combination of answers there is.
 */
final class FoldChecks {

    private static final List<String> CONTESTS = List.of("federal", "state", "local");

    private static final Map<Set<String>, FoldChecks> DONE = new ConcurrentHashMap<>();

    private final List<AnswerClass> classes;
    private final Map<String, Violation> violations = new LinkedHashMap<>();
    private long combinations;

    /** How every set of classes folds, by its bits, under the overlap of contests at hand. */
    private final Recommendation[] folded;

    private FoldChecks(Set<AnswerClass> classes) {
        this.classes = List.copyOf(classes);
        this.folded = new Recommendation[1 << classes.size()];
    }

    /** The fold sees classes only, so that packs with the same classes of answers share one check. */
    static FoldChecks of(Set<AnswerClass> classes) {
        Set<String> names = classes.stream().map(AnswerClass::name).collect(Collectors.toSet());
        return DONE.computeIfAbsent(names, any -> checked(classes));
    }

    private static FoldChecks checked(Set<AnswerClass> classes) {
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
        for (int mask = 0; mask < folded.length; mask++) {
            folded[mask] = fold(chosen(mask), contests);
        }
        for (int mask = 0; mask < folded.length; mask++) {
            combinations++;
            Recommendation outcome = folded[mask];
            if (outcome.isDecided()) {
                neverCountsBlocked(chosen(mask), outcome);
                neverWorseWithout(mask, outcome);
                neverOpensAgain(mask, outcome);
            }
        }
    }

    private void neverCountsBlocked(List<AnswerClass> set, Recommendation outcome) {
        boolean blocked = set.stream().anyMatch(AnswerClass::blocksCounting);
        if (blocked && outcome != Recommendation.REJECT) {
            broken("No ballot counts while an answer rejects it, waits for the voter or is open.", set, outcome);
        }
    }

    /** Taking a defect away must not make a decided outcome worse. */
    private void neverWorseWithout(int mask, Recommendation outcome) {
        for (int bit = 0; bit < classes.size(); bit++) {
            if ((mask >> bit & 1) == 1 && classes.get(bit).isDefect()) {
                Recommendation without = folded[mask & ~(1 << bit)];
                if (without.isDecided() && rank(without) < rank(outcome)) {
                    broken("Clearing a defect never makes the outcome worse.", chosen(mask), outcome);
                }
            }
        }
    }

    /** An open question may get any answer; a decided outcome stands, unless no vote is left to decide here. */
    private void neverOpensAgain(int mask, Recommendation outcome) {
        for (int bit = 0; bit < classes.size(); bit++) {
            if ((mask >> bit & 1) == 1 && classes.get(bit).isOpen()) {
                for (int other = 0; other < classes.size(); other++) {
                    Recommendation turned = folded[(mask & ~(1 << bit)) | 1 << other];
                    boolean noVoteLeft =
                            turned == Recommendation.ADMINISTRATIVE_END || turned == Recommendation.SENT_ON;
                    if (turned != outcome && !noVoteLeft) {
                        broken("Answering an open question never changes a decided outcome.", chosen(mask), outcome);
                    }
                }
            }
        }
    }

    private void broken(String promise, List<AnswerClass> set, Recommendation outcome) {
        String names = String.join("; ", set.stream().map(AnswerClass::name).toList());
        violations.putIfAbsent(promise, new Violation(promise, "answers [" + names + "] lead to " + outcome.words()));
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
        AssessmentOutcome outcome = RecommendationFold.fold(samples, contests, Reason::ordinal);
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
