package org.proviso.core.matching;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.proviso.core.matching.index.RollColumns;
import org.proviso.core.matching.index.RollFrequencies;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.index.SearchStage;
import org.proviso.core.matching.index.VoterSet;

/** Matches envelopes one after another. For one thread: it keeps its working memory. */
final class MatchTask {

    private static final SearchStage[] STAGES = SearchStage.values();

    /** What weighs so many bits less than the best, one against sixteen thousand, changes neither voter nor verdict. */
    private static final double OUTWEIGHED = 14;

    /** More is asked where a voter's own bits are known only: a relative's may be more. */
    private static final double FAR_BEHIND = 20;

    private final RollIndex index;
    private final Weights weights;
    private final VoterSearch search;
    private final Prefilter prefilter;
    private final NameComparer names;
    private final VoterComparer comparer;
    private final MatchScorer scorer;
    private final BitSet gone;
    private int weighed;
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
        comparer = new VoterComparer(index);
        scorer = new MatchScorer(index, frequencies, weights);
    }

    /** The envelope's person with the voters that come near, for estimating. */
    WeightEstimation.SampledEnvelope look(EnvelopePerson claim) {
        CandidateWeighing standings = near(claim, true);
        if (!convinces(standings)) {
            respell(claim, standings, true);
        }
        List<VoterComparison> pairs =
                standings.ranked().stream().map(WeighedCandidate::pair).toList();
        return new WeightEstimation.SampledEnvelope(claim, pairs);
    }

    /** The voters that come near; for who asks for the best only, others are weighed while they can matter beside it. */
    CandidateWeighing near(EnvelopePerson claim, boolean bestOnly) {
        CandidateWeighing standings = new CandidateWeighing(index, weights.prior());
        names.start(claim);
        prefilter.start(claim, names.surnameNumber(), names.givenNumber());
        search.start(claim);
        weighed = 0;
        for (SearchStage stage : STAGES) {
            if (stage != SearchStage.RESPELLED && (!bestOnly || !settles(claim, standings, stage))) {
                weigh(stage, claim, standings, bestOnly);
            }
        }
        return standings;
    }

    /** Whether other spellings of the surname need no look. */
    boolean convinces(CandidateWeighing standings) {
        return prefilter.convinces(standings.bestBits());
    }

    /** Adds the voters found if the surname is misspelled. */
    void respell(EnvelopePerson claim, CandidateWeighing standings, boolean bestOnly) {
        if (search.respell(names.soundsOfNear())) {
            weigh(SearchStage.RESPELLED, claim, standings, bestOnly);
        }
    }

    /** Whether one found already outweighs all that a stage can bring. */
    private boolean settles(EnvelopePerson claim, CandidateWeighing standings, SearchStage stage) {
        return stage != SearchStage.SAME
                && search.nearIsWhole()
                && standings.bestBits() - OUTWEIGHED >= prefilter.most(claim, stage);
    }

    private void weigh(SearchStage stage, EnvelopePerson claim, CandidateWeighing standings, boolean bestOnly) {
        VoterSet voters = search.gather(stage);
        fetchBirths(voters, weighed);
        for (int i = weighed; i < voters.size(); i++) {
            int voter = voters.get(i);
            if (prefilter.passes(claim, voter, births[i]) && !gone.get(voter) && mayBe(claim, voter)) {
                standings.add(scorer.score(claim, comparer.compare(claim, voter, names.surname(), names.given())));
                if (bestOnly) {
                    prefilter.raise(standings.bestBits() - FAR_BEHIND);
                }
            }
        }
        weighed = voters.size();
    }

    /** Compares the names, and no more of them than is needed to tell that they leave no chance. */
    private boolean mayBe(EnvelopePerson claim, int voter) {
        if (!names.compareSurname(voter) && !prefilter.passesOther(claim, voter)) {
            return false;
        }
        names.compareGiven(voter);
        return prefilter.passesNamed(claim, voter, scorer.nameBits(names.surname(), names.given(), voter));
    }

    /** Voters lie scattered in memory: fetching all of them in one go lets the waits overlap. */
    private void fetchBirths(VoterSet voters, int from) {
        if (births.length < voters.size()) {
            births = Arrays.copyOf(births, 2 * voters.size());
        }
        RollColumns columns = index.columns();
        for (int i = from; i < voters.size(); i++) {
            births[i] = columns.birth(voters.get(i));
        }
    }
}
