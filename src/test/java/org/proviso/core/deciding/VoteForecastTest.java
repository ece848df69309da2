package org.proviso.core.deciding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.Rules;

/** What a vote will mean where it does not carry, said before anybody votes. */
class VoteForecastTest {

    private static final String TIE_RULE = " Rule on what a tied vote means: Made for a test (2026).";
    private static final String FAILED_RULE = " Rule on what a failed motion means: Made for a test (2026).";

    private final SmallBoard board = new SmallBoard().rules("board", "majority", "count", "stays_open");
    private int asked;

    private List<String> forecast(int bodies) {
        return VoteForecast.of(board.motion, board.body, bodies, board.pack.book(), board.at, () -> {
            asked++;
            return board.knownToHaveVoted;
        });
    }

    @Test
    void says_what_a_tie_and_a_failed_motion_mean() {
        assertThat(forecast(1))
                .containsExactly(
                        "If the vote is tied: 1, 2 are decided: count." + TIE_RULE,
                        "If the motion fails: 1, 2 stay ready." + FAILED_RULE);
    }

    @Test
    void names_the_envelope_that_no_tie_counts() {
        board.knownToHaveVoted = Set.of(new EnvelopeNumber("2"));
        assertThat(forecast(1).get(0))
                .isEqualTo(
                        "If the vote is tied: 1 is decided: count; 2 stays ready, because records show that the voter"
                                + " voted." + TIE_RULE);
        board.knownToHaveVoted = Set.of(new EnvelopeNumber("1"), new EnvelopeNumber("2"));
        assertThat(forecast(1).get(0))
                .isEqualTo(
                        "If the vote is tied: 1, 2 stay ready, because records show that the voters voted." + TIE_RULE);
    }

    @Test
    void asks_who_voted_only_where_it_matters() {
        board.rules("board", "majority", "stays_open", "stays_open");
        assertThat(forecast(1)).hasSize(2);
        assertThat(asked).isZero();
    }

    @Test
    void says_where_it_depends_on_the_votes() {
        board.asks("count").rules("board", "majority", "stays_open", "reject");
        assertThat(forecast(1).get(1))
                .isEqualTo("If the motion fails: depending on the votes, 1, 2 stay ready; or 1, 2 are decided: reject."
                        + FAILED_RULE);
    }

    @Test
    void a_tie_that_needs_every_vote_is_none() {
        board.rules("board", "unanimous", "count", "count");
        assertThat(forecast(1)).containsExactly("If the motion fails: 1, 2 are decided: count." + FAILED_RULE);
    }

    @Test
    void says_that_a_vote_will_not_stand() {
        board.pack.fromMemory(Rules.TIE_MEANS);
        assertThat(forecast(1).get(0))
                .startsWith("If the vote is tied: the vote does not stand. The office must sign a county ruling on");
        board.pack.fromMemory(Rules.VOTE_TO_REJECT);
        assertThat(forecast(1)).hasSize(1).first().asString().startsWith("A vote on this motion does not stand now.");
    }

    @Test
    void reads_two_bodies_that_vote_alike() {
        board.rules("two_bodies", "majority", "count", "stays_open")
                .pack
                .with(Rules.GATE_DECISION, new RuleValue.NoDeadline());
        assertThat(forecast(2).get(0)).isEqualTo("If the vote is tied: 1, 2 are decided: count." + TIE_RULE);
    }

    @Test
    void says_what_an_officials_no_will_mean() {
        board.official().rules("official", "one", "none", "count");
        assertThat(forecast(1)).containsExactly("If the motion fails: 1, 2 are decided: count." + FAILED_RULE);
    }

    /** One vote to count is enough to keep a rejection from being unanimous. */
    @Test
    void counts_the_votes_of_the_whole_body_among_those_it_goes_through() {
        board.asks("count").rules("board", "unanimous", "stays_open", "reject");
        assertThat(forecast(1).get(1))
                .isEqualTo("If the motion fails: depending on the votes, 1, 2 are decided: reject; or 1, 2 stay ready."
                        + FAILED_RULE);
    }

    @Test
    void writes_out_twelve_envelope_numbers_and_counts_the_rest() {
        board.motion = group(12);
        assertThat(forecast(1).get(1))
                .isEqualTo("If the motion fails: 01, 02, 03, 04, 05, 06, 07, 08, 09, 10, 11, 12 stay ready."
                        + FAILED_RULE);
        board.motion = group(15);
        assertThat(forecast(1).get(1)).contains("11, 12 and 3 more stay ready.").doesNotContain("13");
    }

    private static Motion group(int envelopes) {
        Set<EnvelopeNumber> numbers = IntStream.rangeClosed(1, envelopes)
                .mapToObj(number -> new EnvelopeNumber(String.format("%02d", number)))
                .collect(Collectors.toSet());
        return new Motion(DecisionOutcome.REJECT, numbers, Set.of(), null);
    }
}
