package org.proviso.core.matching;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.proviso.core.matching.Weights.Field;
import org.proviso.core.matching.Weights.Prior;
import org.proviso.core.matching.grades.GradeFrequencies;
import org.proviso.core.matching.index.RollFrequencies;
import org.proviso.core.matching.index.RollIndex;

/**
 * Estimates from the election at hand how its affirmations are written: expectation-maximization (A. Dempster, N. Laird,
 * D. Rubin, Journal of the Royal Statistical Society B 39, 1977) over a sample of envelopes, without known answers. The
 * reasoned shares stand in it like so many envelopes seen before, so that a small election moves them little. The sums
 * run in the order of the envelopes: the same files give the same weights on any machine.
 */
final class WeightEstimation {

    private static final int MOST_SAMPLED = 4_000;
    private static final int ROUNDS = 4;

    /** How many envelopes the reasoned shares, and the reasoned prior, are worth. */
    private static final double SHARES_WORTH = 400;

    private static final double PRIOR_WORTH = 100;

    /** No share becomes so small that one odd envelope would be impossible. */
    private static final double LEAST_SHARE = 0.0005;

    /** Pairs below it teach nothing: among them are relatives, and these would teach that people change their names. */
    private static final double CERTAIN_ENOUGH = 0.95;

    private static final double MARKEDLY = 1.5;

    /** However complete the roll seems, some people are not on it. */
    private static final double LEAST_ON_NO_ROLL = 0.03;

    /** The fields whose grades, unknown left out, are one distribution. */
    private static final Set<Field> ESTIMATED =
            EnumSet.of(Field.SURNAME, Field.GIVEN, Field.DATE, Field.LAST4, Field.ADDRESS);

    private final RollIndex index;
    private final RollFrequencies frequencies;
    private final List<SampledEnvelope> sample;

    /** One envelope's person and the few voters that come near. */
    record SampledEnvelope(EnvelopePerson claim, List<VoterComparison> pairs) {}

    WeightEstimation(RollIndex index, RollFrequencies frequencies, List<SampledEnvelope> sample) {
        this.index = index;
        this.frequencies = frequencies;
        this.sample = sample;
    }

    /** The envelopes to look at: evenly spread over all. */
    static List<MatchQuery> sampled(List<MatchQuery> queries) {
        int count = Math.min(MOST_SAMPLED, queries.size());
        List<MatchQuery> sampled = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            sampled.add(queries.get((int) ((long) i * queries.size() / count)));
        }
        return sampled;
    }

    Weights estimate() {
        Weights weights = Weights.REASONED;
        for (int round = 0; round < ROUNDS && index.size() > 0; round++) {
            weights = next(weights);
        }
        return weights;
    }

    private Weights next(Weights weights) {
        double[][] counts = new double[Field.values().length][];
        for (Field field : Field.values()) {
            counts[field.ordinal()] = new double[field.grades().length];
        }
        double onRoll = 0;
        double nobody = 0;
        MatchScorer scorer = new MatchScorer(index, frequencies, weights);
        for (SampledEnvelope seen : sample) {
            CandidateWeighing standings = new CandidateWeighing(index, weights.prior());
            seen.pairs().forEach(pair -> standings.add(scorer.score(seen.claim(), pair)));
            nobody += standings.nobodyProbability();
            for (WeighedCandidate standing : standings.ranked()) {
                onRoll += standing.probability();
                if (standing.probability() >= CERTAIN_ENOUGH) {
                    count(counts, standing.pair(), standing.probability());
                }
            }
        }
        return new Weights(shares(counts), prior(onRoll, nobody));
    }

    private static void count(double[][] counts, VoterComparison pair, double probability) {
        counts[Field.SURNAME.ordinal()][pair.surname().ordinal()] += probability;
        counts[Field.GIVEN.ordinal()][pair.given().ordinal()] += probability;
        counts[Field.DATE.ordinal()][pair.date().ordinal()] += probability;
        counts[Field.LAST4.ordinal()][pair.last4().ordinal()] += probability;
        counts[Field.ADDRESS.ordinal()][pair.address().ordinal()] += probability;
    }

    private static double[][] shares(double[][] counts) {
        double[][] shares = new double[counts.length][0];
        for (Field field : ESTIMATED) {
            shares[field.ordinal()] = shares(field, counts[field.ordinal()]);
        }
        return shares;
    }

    /**
     * The shares of one field; what is kept keeps its reasoned share, and the others share what that leaves. A grade that
     * two relatives' papers show markedly more often than one person's is kept: nobody can learn it without knowing who is who.
     */
    private static double[] shares(Field field, double[] counts) {
        double free = 0;
        double seen = 0;
        for (int grade = 0; grade < counts.length; grade++) {
            GradeFrequencies reasoned = field.grades()[grade].shares();
            free += isKept(reasoned) ? 0 : reasoned.own();
            seen += isKept(reasoned) ? 0 : counts[grade];
        }
        double[] shares = new double[counts.length];
        for (int grade = 0; grade < counts.length; grade++) {
            GradeFrequencies reasoned = field.grades()[grade].shares();
            double share = free * (counts[grade] + SHARES_WORTH * reasoned.own() / free) / (seen + SHARES_WORTH);
            shares[grade] = isKept(reasoned) ? reasoned.own() : Math.max(LEAST_SHARE, share);
        }
        return shares;
    }

    private static boolean isKept(GradeFrequencies reasoned) {
        return reasoned.own() == 1 || reasoned.kin() > MARKEDLY * reasoned.own();
    }

    /** Who is on the roll is estimated; how many relatives of voters come is not: they look too much like voters. */
    private Prior prior(double onRoll, double nobody) {
        Prior reasoned = Prior.REASONED;
        double known = onRoll + nobody + PRIOR_WORTH;
        double rest = 1 - reasoned.relativeOnRoll();
        double share = (onRoll + PRIOR_WORTH * reasoned.onRoll() / rest) / known;
        double none = Math.max(LEAST_ON_NO_ROLL, rest * (1 - share));
        return new Prior(rest - none, reasoned.relativeOnRoll(), none);
    }
}
