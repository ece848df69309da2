package org.proviso.core.matching;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiFunction;
import java.util.function.ObjIntConsumer;
import org.proviso.core.matching.index.ParallelWork;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.index.UpdatedFrequencies;
import org.proviso.core.matching.index.UpdatedRoll;

/**
 * Finds the voter behind each envelope on the roll. Thread-safe. The answer depends on the roll and the envelopes only,
 * never on the number of threads.
 */
public final class Matcher {

    private static final int CHUNK = 64;

    private final UpdatedRoll roll;
    private final UpdatedFrequencies frequencies;
    private final Weights weights;

    /** Uses the reasoned weights for any envelopes: one envelope gets the same result alone and among others. */
    public Matcher(RollIndex index) {
        this(UpdatedRoll.of(index));
    }

    /** The same over a roll that was updated since its index was made. */
    public Matcher(UpdatedRoll roll) {
        this(roll, UpdatedFrequencies.of(roll), Weights.REASONED);
    }

    private Matcher(UpdatedRoll roll, UpdatedFrequencies frequencies, Weights weights) {
        this.roll = roll;
        this.frequencies = frequencies;
        this.weights = weights;
    }

    /** The same over the same roll, weighing as these envelopes show that theirs are written (see {@link WeightEstimation}). */
    public Matcher estimatedFrom(List<MatchQuery> queries, int threads) {
        List<MatchQuery> sampled = WeightEstimation.sampled(queries);
        List<WeightEstimation.SampledEnvelope> seen = each(sampled, Math.max(1, threads), UpdatedRollMatchTask::look);
        return new Matcher(roll, frequencies, new WeightEstimation(roll.index(), frequencies.index(), seen).estimate());
    }

    /**
     * All envelopes of an election, in the order given. Beyond each by itself, two envelopes that claim one voter are
     * weighed against each other (see {@link Competition}).
     */
    public List<Match> matchAll(List<MatchQuery> queries, int threads) {
        return weighed(queries, threads, UpdatedRollMatchTask::rank, this::matchOf);
    }

    /** The best candidates of all envelopes only, without evidence: what a list of links holds. */
    public List<BestCandidate> pairAll(List<MatchQuery> queries, int threads) {
        return weighed(queries, threads, UpdatedRollMatchTask::best, this::pairingOf);
    }

    /** Makes the result of one envelope. */
    private interface ResultMaker<T> {
        T of(MatchQuery query, List<WeighedCandidate> ranked, MatchVerdict verdict);
    }

    private <T> List<T> weighed(
            List<MatchQuery> queries,
            int threads,
            BiFunction<UpdatedRollMatchTask, EnvelopePerson, List<WeighedCandidate>> look,
            ResultMaker<T> outcome) {
        List<List<WeighedCandidate>> ranked = each(queries, Math.max(1, threads), look);
        List<List<WeighedCandidate>> weighed = Competition.weigh(ranked);
        List<T> results = new ArrayList<>(Collections.nCopies(queries.size(), null));
        inChunks(Collections.nCopies(Math.max(1, threads), 0), queries.size(), (thread, i) -> {
            boolean changed = weighed.get(i) != ranked.get(i);
            MatchVerdict verdict = MatchVerdictRule.decide(weighed.get(i));
            verdict = changed && verdict == MatchVerdict.SURE ? MatchVerdict.LIKELY : verdict;
            results.set(i, outcome.of(queries.get(i), weighed.get(i), verdict));
        });
        return results;
    }

    private BestCandidate pairingOf(MatchQuery query, List<WeighedCandidate> ranked, MatchVerdict verdict) {
        if (ranked.isEmpty()) {
            return new BestCandidate(query.envelopeNo(), null, 0, verdict);
        }
        WeighedCandidate best = ranked.get(0);
        return new BestCandidate(query.envelopeNo(), roll.voterId(best.pair().voter()), best.probability(), verdict);
    }

    /**
     * Looks at the envelopes slice by slice, within a slice in the order of their surnames' sounds, so that each thread works
     * for a while in one part of the index. Each sets places of its own, which the end of the work makes visible to all.
     */
    private <T> List<T> each(
            List<MatchQuery> queries, int threads, BiFunction<UpdatedRollMatchTask, EnvelopePerson, T> look) {
        List<T> results = new ArrayList<>(Collections.nCopies(queries.size(), null));
        List<UpdatedRollMatchTask> tasks = new ArrayList<>();
        for (int i = 0; i < threads; i++) {
            tasks.add(new UpdatedRollMatchTask(roll, frequencies, weights));
        }
        for (int from = 0; from < queries.size(); from += SoundOrder.MOST) {
            List<MatchQuery> slice = queries.subList(from, Math.min(queries.size(), from + SoundOrder.MOST));
            each(slice, tasks, look, results.subList(from, from + slice.size()));
        }
        return results;
    }

    private static <T> void each(
            List<MatchQuery> queries,
            List<UpdatedRollMatchTask> tasks,
            BiFunction<UpdatedRollMatchTask, EnvelopePerson, T> look,
            List<T> results) {
        EnvelopePerson[] claims = new EnvelopePerson[queries.size()];
        inChunks(tasks, claims.length, (task, i) -> claims[i] = EnvelopePerson.of(queries.get(i)));
        int[] order = SoundOrder.of(claims);
        inChunks(tasks, claims.length, (task, i) -> results.set(order[i], look.apply(task, claims[order[i]])));
    }

    private static <W> void inChunks(List<W> workers, int count, ObjIntConsumer<W> work) {
        AtomicInteger next = new AtomicInteger();
        AtomicInteger thread = new AtomicInteger();
        Runnable chunks = () -> {
            W worker = workers.get(thread.getAndIncrement());
            for (int from = next.getAndAdd(CHUNK); from < count; from = next.getAndAdd(CHUNK)) {
                for (int i = from; i < Math.min(count, from + CHUNK); i++) {
                    work.accept(worker, i);
                }
            }
        };
        ParallelWork.run(chunks, workers.size());
    }

    private Match matchOf(MatchQuery query, List<WeighedCandidate> ranked, MatchVerdict verdict) {
        EnvelopePerson claim = EnvelopePerson.of(query);
        List<Candidate> candidates = ranked.stream()
                .map(standing -> new Candidate(
                        roll.voterId(standing.pair().voter()),
                        standing.probability(),
                        evidence(claim, standing.pair())))
                .toList();
        return new Match(query.envelopeNo(), verdict, MatchVerdictRule.reason(verdict, ranked), candidates);
    }

    private List<String> evidence(EnvelopePerson claim, VoterComparison pair) {
        return MatchEvidence.of(roll.part(pair.voter()), claim, pair.at(roll.placeIn(pair.voter())));
    }
}
