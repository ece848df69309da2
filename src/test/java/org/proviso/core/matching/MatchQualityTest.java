package org.proviso.core.matching;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The bar on an invented election whose slips, nicknames and look-alikes are made by another model than the weights were
 * reasoned from: F1 of sure and likely links at least 0.993; sure links right at least 999 times in 1,000, and at least
 * 95 of 100 voters linked for sure. Seeds were not chosen; thresholds are not fitted to this file.
 */
class MatchQualityTest {

    private static MessyElection election;
    private static List<Match> matches;
    private static Tally tally;

    @BeforeAll
    static void match_an_invented_election() throws IOException {
        election = new MessyElection(20261103, 40_000, 8_000);
        RollIndexBuilder builder = RollIndex.builder();
        election.roll.forEach(person -> builder.add(person.entry()));
        matches = new Matcher(builder.build()).matchAll(election.envelopes, 2);
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

    @Test
    void probabilities_mean_what_they_say() {
        double expected = 0;
        int right = 0;
        for (Match match : matches) {
            if (match.best().isPresent()) {
                expected += match.best().get().probability();
                right += match.best().get().voterId().equals(election.truth.get(match.envelopeNo())) ? 1 : 0;
            }
        }
        assertThat(expected / right).isBetween(0.99, 1.01);
    }
}
