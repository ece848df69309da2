package org.proviso.core.matching;

import java.util.BitSet;
import java.util.List;

/** Matches envelopes one after another. For one thread: it keeps its working memory. */
final class MatchTask {

    private final RollIndex index;
    private final Weights weights;
    private final VoterSearch search;
    private final Prefilter prefilter;
    private final NameComparer names;
    private final Comparer comparer;
    private final Scorer scorer;
    private final BitSet gone;
    private int[] births = new int[1024];

    MatchTask(RollIndex index, RollFrequencies frequencies, Weights weights) {
        this(index, frequencies, weights, new BitSet());
    }

    /** Voters gone are passed over. */
    MatchTask(RollIndex index, RollFrequencies frequencies, Weights weights, BitSet gone) {
        this.gone = gone;
        this.index = index;
        this.weights = weights;
        search = new VoterSearch(index);
        prefilter = new Prefilter(index, frequencies, weights);
        names = new NameComparer(index);
        comparer = new Comparer(index);
        scorer = new Scorer(index, frequencies, weights);
    }

    /** The envelope's person with the voters that come near, for estimating. */
    Estimation.Seen look(MatchQuery query) {
        Claim claim = Claim.of(query);
        List<Comparison> pairs =
                standings(claim).ranked().stream().map(Standing::pair).toList();
        return new Estimation.Seen(claim, pairs);
    }

    Standings standings(Claim claim) {
        Standings standings = new Standings(index, weights.prior());
        prefilter.start(claim);
        names.start(claim);
        VoterSet voters = search.find(claim);
        fetchBirths(voters);
        for (int i = 0; i < voters.size(); i++) {
            int voter = voters.get(i);
            if (prefilter.passes(claim, voter, births[i]) && !gone.get(voter)) {
                names.compare(voter);
                if (prefilter.passesNamed(claim, voter, scorer.nameBits(names.surname(), names.given(), voter))) {
                    standings.add(scorer.score(claim, comparer.compare(claim, voter, names.surname(), names.given())));
                }
            }
        }
        return standings;
    }

    /** Voters lie scattered in memory: fetching all of them in one go lets the waits overlap. */
    private void fetchBirths(VoterSet voters) {
        if (births.length < voters.size()) {
            births = new int[2 * voters.size()];
        }
        RollColumns columns = index.columns();
        for (int i = 0; i < voters.size(); i++) {
            births[i] = columns.birth(voters.get(i));
        }
    }
}
