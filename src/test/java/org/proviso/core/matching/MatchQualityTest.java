package org.proviso.core.matching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.proviso.core.VoterId;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.index.RollIndexBuilder;

/**
 * The bar on an invented election whose slips, nicknames and look-alikes are made by another model than the weights were
 * reasoned from: F1 of sure and likely links at least 0.993; sure links right at least 999 times in 1,000, and at least
 * 95 of 100 voters linked for sure. Seeds were not chosen; thresholds are not fitted to this file.
 */
class MatchQualityTest {

    private static MessyElection election;
    private static Matcher matcher;
    private static List<Match> matches;
    private static Tally tally;

    @BeforeAll
    static void match_an_invented_election() throws IOException {
        election = new MessyElection(20261103, 40_000, 8_000);
        RollIndexBuilder builder = RollIndex.builder();
        election.roll.forEach(person -> builder.add(person.entry()));
        matcher = new Matcher(builder.build());
        matches = matcher.matchAll(election.envelopes, 2);
        tally = Tally.of(matches, election.truth);
        System.out.println("matching on an invented election: " + tally);
    }

    @Test
    void links_are_right_and_complete() {
        assertThat(tally.f1()).as(tally.toString()).isGreaterThanOrEqualTo(0.993);
    }

    @Test
    void sure_links_are_hardly_ever_wrong() {
        assertThat(tally.surePrecision()).as(tally.toString()).isGreaterThanOrEqualTo(0.999);
        assertThat(tally.sureRecall()).as(tally.toString()).isGreaterThanOrEqualTo(0.95);
    }

    /** Who asks for the best only is spared voters far behind it: these would take a thousandth of its probability at most. */
    @Test
    void the_best_alone_is_the_best_among_all() {
        List<BestCandidate> pairings = matcher.pairAll(election.envelopes, 2);
        for (int i = 0; i < matches.size(); i++) {
            Match match = matches.get(i);
            VoterId best = match.best().map(Candidate::voterId).orElse(null);
            double probability = match.best().map(Candidate::probability).orElse(0.0);
            assertThat(pairings.get(i).voterId()).as(match.envelopeNo().value()).isEqualTo(best);
            assertThat(pairings.get(i).verdict()).as(match.envelopeNo().value()).isEqualTo(match.verdict());
            assertThat(pairings.get(i).probability())
                    .as(match.envelopeNo().value())
                    .isCloseTo(probability, within(0.001));
        }
    }

    @Test
    void probabilities_mean_what_they_say() {
        double expected = 0;
        int right = 0;
        for (Match match : matches) {
            if (match.best().isPresent()) {
                expected += match.best().get().probability();
                right += match.best()
                                .get()
                                .voterId()
                                .value()
                                .equals(election.truth.get(match.envelopeNo().value()))
                        ? 1
                        : 0;
            }
        }
        assertThat(expected / right).isBetween(0.99, 1.01);
    }
}
