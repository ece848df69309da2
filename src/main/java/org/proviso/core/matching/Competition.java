package org.proviso.core.matching;

import java.util.ArrayList;
import java.util.List;

/**
 * Two envelopes that claim one voter. The same voter may really have cast both, so nothing is forced: only where one
 * claim is all but certain and the other envelope has another voter nearly as good does the first claim weigh against
 * the second. A changed standing is never the ground of a sure verdict.
 */
public final class Competition {

    private static final double CERTAIN = 0.99;
    private static final double OTHER_CHOICE = 0.05;
    private static final int SEVERAL = -1;

    /** How much rarer a second envelope by one voter is than two voters with one each (common practice). */
    private static final double SECOND_ENVELOPE = 0.1;

    private Competition() {}

    /** The standings, in the same order; a list that nothing changes is the same object. */
    static List<List<WeighedCandidate>> weigh(List<List<WeighedCandidate>> all) {
        int[] holders = holders(all);
        List<List<WeighedCandidate>> weighed = new ArrayList<>(all.size());
        for (int i = 0; i < all.size(); i++) {
            weighed.add(weigh(all.get(i), i, holders));
        }
        return weighed;
    }

    /** By voter the envelope that claims it all but certainly, counted from 1; 0 where none does, {@code SEVERAL} where more do. */
    private static int[] holders(List<List<WeighedCandidate>> all) {
        int last = -1;
        for (List<WeighedCandidate> ranked : all) {
            last = ranked.isEmpty() ? last : Math.max(last, ranked.get(0).pair().voter());
        }
        int[] holders = new int[last + 1];
        for (int i = 0; i < all.size(); i++) {
            List<WeighedCandidate> ranked = all.get(i);
            if (!ranked.isEmpty() && ranked.get(0).probability() >= CERTAIN) {
                int voter = ranked.get(0).pair().voter();
                holders[voter] = holders[voter] == 0 ? i + 1 : SEVERAL;
            }
        }
        return holders;
    }

    private static List<WeighedCandidate> weigh(List<WeighedCandidate> ranked, int envelope, int[] holders) {
        if (ranked.size() < 2 || ranked.get(0).probability() >= CERTAIN) {
            return ranked;
        }
        int holder = holders[ranked.get(0).pair().voter()];
        boolean otherHolds = holder != 0 && holder != envelope + 1;
        return otherHolds && ranked.get(1).probability() >= OTHER_CHOICE ? lowered(ranked) : ranked;
    }

    private static List<WeighedCandidate> lowered(List<WeighedCandidate> ranked) {
        double first = ranked.get(0).probability();
        double total = 1 - first + first * SECOND_ENVELOPE;
        List<WeighedCandidate> lowered = new ArrayList<>();
        for (int i = 0; i < ranked.size(); i++) {
            double share = i == 0 ? first * SECOND_ENVELOPE : ranked.get(i).probability();
            lowered.add(new WeighedCandidate(ranked.get(i).pair(), share / total));
        }
        lowered.sort((a, b) -> Double.compare(b.probability(), a.probability()));
        return lowered;
    }
}
