package org.proviso.core.matching;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiFunction;
import java.util.function.ObjIntConsumer;

/**
 * Finds the voter behind each envelope on the roll. Thread-safe. The answer depends on the roll and the envelopes only,
 * never on the number of threads.
 */
public final class Matcher {

    private static final int CHUNK = 64;

    private final UpdatedRoll roll;
    private final UpdatedFrequencies frequencies;
    private final Weights weights;

    /** Weighs as reasoned, whatever the envelopes are: one envelope comes out alike by itself and among others. */
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

    /** The same over the same roll, weighing as these envelopes show that theirs are written (see {@link Estimation}). */
    public Matcher estimatedFrom(List<MatchQuery> queries, int threads) {
        List<MatchQuery> sampled = Estimation.sampled(queries);
        List<Estimation.Seen> seen = each(sampled, Math.max(1, threads), UpdatedTask::look);
        return new Matcher(roll, frequencies, new Estimation(roll.index(), frequencies.index(), seen).estimate());
    }

    /**
     * All envelopes of an election, in the order given. Beyond each by itself, two envelopes that claim one voter are
     * weighed against each other (see {@link Competition}).
     */
    public List<Match> matchAll(List<MatchQuery> queries, int threads) {
        return weighed(queries, threads, UpdatedTask::rank, this::matchOf);
    }

    /** The best candidates of all envelopes only, without evidence: what a list of links holds. */
    public List<Pairing> pairAll(List<MatchQuery> queries, int threads) {
        return weighed(queries, threads, UpdatedTask::best, this::pairingOf);
    }

    /** Makes the result of one envelope. */
    private interface Outcome<T> {
        T of(MatchQuery query, List<Standing> ranked, Verdict verdict);
    }

    private <T> List<T> weighed(
            List<MatchQuery> queries,
            int threads,
            BiFunction<UpdatedTask, Claim, List<Standing>> look,
            Outcome<T> outcome) {
        List<List<Standing>> ranked = each(queries, Math.max(1, threads), look);
        List<List<Standing>> weighed = Competition.weigh(ranked);
        List<T> results = new ArrayList<>(Collections.nCopies(queries.size(), null));
        inChunks(Collections.nCopies(Math.max(1, threads), 0), queries.size(), (thread, i) -> {
            boolean changed = weighed.get(i) != ranked.get(i);
            Verdict verdict = VerdictRule.of(weighed.get(i));
            verdict = changed && verdict == Verdict.SURE ? Verdict.LIKELY : verdict;
            results.set(i, outcome.of(queries.get(i), weighed.get(i), verdict));
        });
        return results;
    }

    private Pairing pairingOf(MatchQuery query, List<Standing> ranked, Verdict verdict) {
        if (ranked.isEmpty()) {
            return new Pairing(query.envelopeNo(), "", 0, verdict);
        }
        Standing best = ranked.get(0);
        return new Pairing(query.envelopeNo(), roll.voterId(best.pair().voter()), best.probability(), verdict);
    }

    /**
     * Looks at the envelopes slice by slice, within a slice in the order of their surnames' sounds, so that each thread works
     * for a while in one part of the index. Each sets places of its own, which the end of the work makes visible to all.
     */
    private <T> List<T> each(List<MatchQuery> queries, int threads, BiFunction<UpdatedTask, Claim, T> look) {
        List<T> results = new ArrayList<>(Collections.nCopies(queries.size(), null));
        List<UpdatedTask> tasks = new ArrayList<>();
        for (int i = 0; i < threads; i++) {
            tasks.add(new UpdatedTask(roll, frequencies, weights));
        }
        for (int from = 0; from < queries.size(); from += SoundOrder.MOST) {
            List<MatchQuery> slice = queries.subList(from, Math.min(queries.size(), from + SoundOrder.MOST));
            each(slice, tasks, look, results.subList(from, from + slice.size()));
        }
        return results;
    }

    private static <T> void each(
            List<MatchQuery> queries,
            List<UpdatedTask> tasks,
            BiFunction<UpdatedTask, Claim, T> look,
            List<T> results) {
        Claim[] claims = new Claim[queries.size()];
        inChunks(tasks, claims.length, (task, i) -> claims[i] = Claim.of(queries.get(i)));
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
        Workers.run(chunks, workers.size());
    }

    private Match matchOf(MatchQuery query, List<Standing> ranked, Verdict verdict) {
        Claim claim = Claim.of(query);
        List<Candidate> candidates = ranked.stream()
                .map(standing -> new Candidate(
                        roll.voterId(standing.pair().voter()),
                        standing.probability(),
                        evidence(claim, standing.pair())))
                .toList();
        return new Match(query.envelopeNo(), verdict, VerdictRule.reason(verdict, ranked), candidates);
    }

    private List<String> evidence(Claim claim, Comparison pair) {
        return Evidence.of(roll.part(pair.voter()), claim, pair.at(roll.placeIn(pair.voter())));
    }
}
