package org.proviso.core.matching;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.index.RollIndexBuilder;

/**
 * Measures matching on an invented roll: {@code MatchBench VOTERS ENVELOPES SEED [THREADS] [show]}. Prints the times for
 * index and matching and how the verdicts stand against the truth; {@code show} adds a line for each wrong or missed
 * link. Run with {@code -Xmx1g} for a million voters.
 */
final class MatchBench {

    private MatchBench() {}

    public static void main(String[] arguments) throws IOException {
        int threads = arguments.length > 3 ? Integer.parseInt(arguments[3]) : 2;
        MessyElection election = new MessyElection(
                Long.parseLong(arguments[2]), Integer.parseInt(arguments[0]), Integer.parseInt(arguments[1]));
        System.out.printf("made: processor time so far %.2f s%n", cpu());
        long start = System.nanoTime();
        RollIndexBuilder builder = RollIndex.builder();
        for (InventedPerson person : election.roll) {
            builder.add(person.entry());
        }
        Matcher matcher = new Matcher(builder.build());
        System.out.printf(
                "index: %d voters in %.2f s, processor time so far %.2f s%n",
                election.roll.size(), seconds(start), cpu());
        start = System.nanoTime();
        List<Match> matches = matcher.matchAll(election.envelopes, threads);
        System.out.printf(
                "match: %d envelopes in %.2f s, processor time so far %.2f s%n", matches.size(), seconds(start), cpu());
        System.out.println(Tally.of(matches, election.truth));
        if (arguments.length > 4) {
            show(election, matches);
        }
    }

    private static void show(MessyElection election, List<Match> matches) {
        for (int i = 0; i < matches.size(); i++) {
            Match match = matches.get(i);
            String truth = election.truth.get(match.envelopeNo().value());
            boolean linked = match.verdict() == MatchVerdict.SURE || match.verdict() == MatchVerdict.LIKELY;
            String best = linked ? match.best().orElseThrow().voterId().value() : "";
            if (!best.equals(truth) || match.verdict() != MatchVerdict.SURE && !truth.isEmpty()) {
                String kind = best.equals(truth) ? "NOTSURE" : linked ? match.verdict() + "-WRONG" : "MISSED";
                System.out.println(kind + " " + match.verdict() + " truth=" + truth + " " + election.envelopes.get(i)
                        + "\n    " + match.candidates().stream().limit(2).toList());
                election.roll.stream()
                        .filter(person -> person.id().equals(truth))
                        .forEach(person -> System.out.println("    true: " + person));
            }
        }
    }

    /** On a busy machine the processor time says more than the clock. */
    private static double cpu() {
        return ProcessHandle.current()
                        .info()
                        .totalCpuDuration()
                        .orElse(Duration.ZERO)
                        .toMillis()
                / 1e3;
    }

    private static double seconds(long start) {
        return (System.nanoTime() - start) / 1e9;
    }
}
