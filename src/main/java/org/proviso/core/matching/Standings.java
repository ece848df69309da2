package org.proviso.core.matching;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Weighs the candidates of one envelope against each other, against their relatives who are not on the roll, and
 * against nobody on the roll: Bayes' rule over all of these.
 */
final class Standings {

    /** Before looking: the voter of an envelope is on the roll, is not but a relative is, is not (common practice). */
    private static final double ON_ROLL = 0.75;

    private static final double RELATIVE_ON_ROLL = 0.10;
    private static final double ON_NO_ROLL = 0.15;
    private static final int KEPT = 5;

    private final RollIndex index;
    private final List<Score> best = new ArrayList<>(KEPT + 1);
    private final Comparator<Score> order;
    private double total = ON_NO_ROLL;

    Standings(RollIndex index) {
        this.index = index;
        order = Comparator.comparingDouble(Score::ownBits)
                .reversed()
                .thenComparing(score -> index.voterId(score.pair().voter()));
    }

    void add(Score score) {
        total += odds(ON_ROLL, score.ownBits()) + odds(RELATIVE_ON_ROLL, score.kinBits());
        if (best.size() == KEPT && score.ownBits() < best.get(KEPT - 1).ownBits()) {
            return;
        }
        int place = best.size();
        while (place > 0 && order.compare(score, best.get(place - 1)) < 0) {
            place--;
        }
        best.add(place, score);
        if (best.size() > KEPT) {
            best.remove(KEPT);
        }
    }

    private double odds(double before, double bits) {
        return before / index.size() * Math.pow(2, bits);
    }

    /** The best candidates with their probabilities. */
    List<Standing> ranked() {
        return best.stream()
                .map(score -> new Standing(score.pair(), odds(ON_ROLL, score.ownBits()) / total))
                .toList();
    }
}
