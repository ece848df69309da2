package org.proviso.core.matching;

import java.util.List;
import org.proviso.core.matching.index.UpdatedFrequencies;
import org.proviso.core.matching.index.UpdatedRoll;

/** Matches envelopes one after another to a roll with its updates. For one thread: it keeps its working memory. */
final class UpdatedRollMatchTask {

    private final MatchTask index;
    private final MatchTask added;
    private final boolean updated;

    UpdatedRollMatchTask(UpdatedRoll roll, UpdatedFrequencies frequencies, Weights weights) {
        updated = roll.parts().size() > 1;
        index = new MatchTask(roll.index(), frequencies.index(), weights, roll.gone());
        added = updated ? new MatchTask(roll.added(), frequencies.added(), weights) : index;
    }

    /** The voters that come near, each weighed. */
    List<WeighedCandidate> rank(EnvelopePerson claim) {
        return ranked(claim, false);
    }

    /** The same for who asks for the best only. */
    List<WeighedCandidate> best(EnvelopePerson claim) {
        return ranked(claim, true);
    }

    private List<WeighedCandidate> ranked(EnvelopePerson claim, boolean bestOnly) {
        CandidateWeighing standings = index.near(claim, bestOnly);
        CandidateWeighing newer = updated ? added.near(claim, bestOnly) : standings;
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
    WeightEstimation.SampledEnvelope look(EnvelopePerson claim) {
        return index.look(claim);
    }
}
