package org.proviso.core.matching;

import java.util.List;

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

    List<Standing> rank(MatchQuery query) {
        Claim claim = Claim.of(query);
        Standings standings = index.standings(claim);
        if (updated) {
            standings.join(added.standings(claim));
        }
        return standings.ranked();
    }

    /** For estimating, which the few voters of an update teach nothing. */
    Estimation.Seen look(MatchQuery query) {
        return index.look(query);
    }
}
