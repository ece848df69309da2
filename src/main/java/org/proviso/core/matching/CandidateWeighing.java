package org.proviso.core.matching;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.VoterId;
import org.proviso.core.matching.index.RollIndex;

/**
 * Weighs the candidates of one envelope against each other, against their relatives who are not on the roll, and
 * against nobody on the roll: Bayes' rule over all of these.
 */
final class CandidateWeighing {

    private static final int KEPT = 5;

    private final RollIndex index;
    private final List<MatchScore> best = new ArrayList<>(KEPT + 1);
    private final Weights.Prior prior;
    private double total;
    private @Nullable RollIndex joined;

    CandidateWeighing(RollIndex index, Weights.Prior prior) {
        this.index = index;
        this.prior = prior;
        total = prior.onNoRoll();
    }

    private VoterId voterId(int voter) {
        return voter < index.size() || joined == null ? index.voterId(voter) : joined.voterId(voter - index.size());
    }

    /** Takes the standings of the same envelope among an update's voters, whose places come after the index's. */
    void join(CandidateWeighing added) {
        joined = added.index;
        total += added.total - prior.onNoRoll();
        added.best.forEach(score -> place(score.after(index.size())));
    }

    void add(MatchScore score) {
        total += odds(prior.onRoll(), score.ownBits()) + odds(prior.relativeOnRoll(), score.kinBits());
        place(score);
    }

    private void place(MatchScore score) {
        if (best.size() == KEPT && score.ownBits() < best.get(KEPT - 1).ownBits()) {
            return;
        }
        int place = best.size();
        while (place > 0 && isBefore(score, best.get(place - 1))) {
            place--;
        }
        best.add(place, score);
        if (best.size() > KEPT) {
            best.remove(KEPT);
        }
    }

    /** The better one first; of two as good, the one with the first number. */
    private boolean isBefore(MatchScore score, MatchScore other) {
        return score.ownBits() > other.ownBits()
                || (score.ownBits() == other.ownBits()
                        && voterId(score.pair().voter())
                                        .compareTo(voterId(other.pair().voter()))
                                < 0);
    }

    private double odds(double before, double bits) {
        return before / index.voters() * Math.pow(2, bits);
    }

    /** The probability that it was cast by someone who has neither a record nor a relative on the roll. */
    double nobodyProbability() {
        return prior.onNoRoll() / total;
    }

    /** What the best candidate weighs; nothing without one. */
    double bestBits() {
        return best.isEmpty() ? Double.NEGATIVE_INFINITY : best.get(0).ownBits();
    }

    /** The best candidates with their probabilities. */
    List<WeighedCandidate> ranked() {
        List<WeighedCandidate> ranked = new ArrayList<>(best.size());
        for (MatchScore score : best) {
            ranked.add(new WeighedCandidate(score.pair(), odds(prior.onRoll(), score.ownBits()) / total));
        }
        return ranked;
    }
}
