package org.proviso.core.matching;

import java.util.List;

/** Matches envelopes one after another. For one thread: it keeps its working memory. */
final class MatchTask {

    private final RollIndex index;
    private final VoterSearch search;
    private final Prefilter prefilter;
    private final Comparer comparer;
    private final Scorer scorer;

    MatchTask(RollIndex index, BirthYears years) {
        this.index = index;
        search = new VoterSearch(index.lists());
        prefilter = new Prefilter(index);
        comparer = new Comparer(index);
        scorer = new Scorer(index, years);
    }

    List<Standing> rank(MatchQuery query) {
        Claim claim = Claim.of(query);
        Standings standings = new Standings(index);
        prefilter.start(claim);
        VoterSet voters = search.find(claim);
        for (int i = 0; i < voters.size(); i++) {
            int voter = voters.get(i);
            if (prefilter.passes(claim, voter)) {
                standings.add(scorer.score(claim, comparer.compare(claim, voter)));
            }
        }
        return standings.ranked();
    }
}
