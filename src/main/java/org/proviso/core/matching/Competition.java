package org.proviso.core.matching;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Two envelopes that claim one voter. The same voter may really have cast both, so nothing is forced: only where one
 * claim is all but certain and the other envelope has another voter nearly as good does the first claim weigh against
 * the second. A changed standing is never the ground of a sure verdict.
 */
final class Competition {

    private static final double CERTAIN = 0.99;
    private static final double OTHER_CHOICE = 0.05;

    /** How much rarer a second envelope by one voter is than two voters with one each (common practice). */
    private static final double SECOND_ENVELOPE = 0.1;

    private Competition() {}

    /** The standings, in the same order; a list that nothing changes is the same object. */
    static List<List<Standing>> weigh(List<List<Standing>> all) {
        Map<Integer, Integer> holders = holders(all);
        List<List<Standing>> weighed = new ArrayList<>(all.size());
        for (int i = 0; i < all.size(); i++) {
            weighed.add(weigh(all.get(i), i, holders));
        }
        return weighed;
    }

    /** Which envelope claims a voter all but certainly; -1 where more than one does. */
    private static Map<Integer, Integer> holders(List<List<Standing>> all) {
        Map<Integer, Integer> holders = new HashMap<>();
        for (int i = 0; i < all.size(); i++) {
            List<Standing> ranked = all.get(i);
            if (!ranked.isEmpty() && ranked.get(0).probability() >= CERTAIN) {
                holders.merge(ranked.get(0).pair().voter(), i, (one, other) -> -1);
            }
        }
        return holders;
    }

    private static List<Standing> weigh(List<Standing> ranked, int envelope, Map<Integer, Integer> holders) {
        if (ranked.size() < 2 || ranked.get(0).probability() >= CERTAIN) {
            return ranked;
        }
        Integer holder = holders.get(ranked.get(0).pair().voter());
        boolean otherHolds = holder != null && holder != envelope;
        return otherHolds && ranked.get(1).probability() >= OTHER_CHOICE ? lowered(ranked) : ranked;
    }

    private static List<Standing> lowered(List<Standing> ranked) {
        double first = ranked.get(0).probability();
        double total = 1 - first + first * SECOND_ENVELOPE;
        List<Standing> lowered = new ArrayList<>();
        for (int i = 0; i < ranked.size(); i++) {
            double share = i == 0 ? first * SECOND_ENVELOPE : ranked.get(i).probability();
            lowered.add(new Standing(ranked.get(i).pair(), share / total));
        }
        lowered.sort((a, b) -> Double.compare(b.probability(), a.probability()));
        return lowered;
    }
}
