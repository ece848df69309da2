package org.proviso.core.matching;

import java.util.List;
import org.proviso.core.matching.index.UpdatedFrequencies;
import org.proviso.core.matching.index.UpdatedRoll;

/** Matches envelopes one after another to a roll with its updates. For one thread: it keeps its working memory. */
final class UpdatedTask {

    private final MatchTask index;
    private final MatchTask added;
    private final boolean updated;

    UpdatedTask(UpdatedRoll roll, UpdatedFrequencies frequencies, Weights weights) {
        updated = roll.parts().size() > 1;
        index = new MatchTask(roll.index(), frequencies.index(), weights, roll.gone());
        added = updated ? new MatchTask(roll.added(), frequencies.added(), weights) : index;
    }

    /** The voters that come near, each weighed. */
    List<Standing> rank(Claim claim) {
        return ranked(claim, false);
    }

    /** The same for who asks for the best only. */
    List<Standing> best(Claim claim) {
        return ranked(claim, true);
    }

    private List<Standing> ranked(Claim claim, boolean bestOnly) {
        Standings standings = index.near(claim, bestOnly);
        Standings newer = updated ? added.near(claim, bestOnly) : standings;
        if (!index.convinces(standings) && !index.convinces(newer)) {
            index.respell(claim, standings, bestOnly);
            if (updated) {
                added.respell(claim, newer, bestOnly);
            }
        }
        if (updated) {
            standings.join(newer);
        }
        return standings.ranked();
    }

    /** For estimating, which the few voters of an update teach nothing. */
    Estimation.Seen look(Claim claim) {
        return index.look(claim);
    }
}
