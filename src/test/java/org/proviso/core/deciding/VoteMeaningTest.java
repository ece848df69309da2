package org.proviso.core.deciding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.rules.InformationRules;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rules;

/** What a vote that stands comes to. */
class VoteMeaningTest {

    private final SmallBoard board = new SmallBoard();

    /** An abstention: still unanimous if all the others agree (Code of Maryland Regulations 33.16.05.03). */
    @ParameterizedTest
    @CsvSource({
        "yes yes yes, carried: reject",
        "yes yes abstains, carried: reject",
        "yes abstains abstains, carried: reject",
        "yes yes recused, carried: reject",
        "yes yes no, failed: count",
        "yes no abstains, failed: count",
        "no no no, failed: count"
    })
    void rejects_only_unanimously_where_the_law_says_so(String votes, String result) {
        board.rules("board", "unanimous", "reject", "count");
        assertThat(board.comesTo(votes)).isEqualTo(result);
    }

    /** Indiana: majority vote of the county board (Indiana Code 3-11.7-5-1.5). */
    @ParameterizedTest
    @CsvSource({
        "reject, yes yes no, carried: reject",
        "reject, yes abstains abstains, failed: stays open",
        "reject, yes yes abstains, carried: reject",
        "reject, yes yes recused, carried: reject",
        "reject, yes no no, failed: stays open",
        "reject, yes no abstains, tied: count",
        "count, yes abstains abstains, carried: count",
        "count, yes yes no, carried: count",
        "count, yes no abstains, tied: count",
        "count, no no yes, failed: stays open",
        "count_in_part, yes yes no, carried: count in part",
        "count_in_part, yes no abstains, tied: count in part",
        "count_in_part, no no abstains, failed: stays open"
    })
    void rejects_by_majority_of_the_members_and_counts_by_majority_of_the_votes_cast(
            String asks, String votes, String result) {
        board.asks(asks).rules("board", "majority", "count", "stays_open");
        assertThat(board.comesTo(votes)).isEqualTo(result);
    }

    /** Whoever names in the pack or in a county ruling of what it is a majority has that. */
    @ParameterizedTest
    @CsvSource({
        "reject, majority_of_votes_cast, yes abstains abstains, carried: reject",
        "reject, majority_of_members, yes abstains abstains, failed: stays open",
        "count, majority_of_votes_cast, yes abstains abstains, carried: count",
        "count, majority_of_members, yes abstains abstains, failed: stays open",
        "count, unanimous, yes yes no, failed: stays open"
    })
    void takes_the_majority_that_the_pack_names(String asks, String needed, String votes, String result) {
        board.asks(asks).rules("board", "majority", "count", "stays_open");
        board.pack.word(asks.equals("reject") ? Rules.VOTE_TO_REJECT : InformationRules.VOTE_TO_COUNT, needed);
        assertThat(board.comesTo(votes)).isEqualTo(result);
    }

    @Test
    void says_what_was_needed_where_more_said_yes_than_no() {
        board.rules("board", "majority", "count", "stays_open");
        assertThat(((VoteResult.Stands) board.votes("yes abstains abstains")).words())
                .isEqualTo("The motion to reject failed, 1 to 0 (needed: 2 of 3 members): stays open.");
    }

    @Test
    void rejects_by_a_failed_motion_to_count_only_with_a_majority_of_the_members() {
        board.asks("count").rules("board", "majority", "stays_open", "reject");
        assertThat(board.comesTo("no abstains abstains")).isEqualTo("failed: stays open");
        assertThat(board.comesTo("no no abstains")).isEqualTo("failed: reject");
    }

    @ParameterizedTest
    @CsvSource({
        "reject, count, yes no, tied: count",
        "reject, reject, yes no, tied: reject",
        "reject, stays_open, yes no, tied: stays open",
        "reject, none, yes no, tied: stays open",
        "count, reject, yes no, tied: reject",
        "count, count, yes no, tied: count",
        "count_in_part, reject, yes no, tied: reject"
    })
    void takes_a_tie_as_the_pack_says(String asks, String tie, String votes, String result) {
        board.asks(asks).rules("board", "majority", tie, "stays_open");
        assertThat(board.comesTo(votes + " recused")).isEqualTo(result);
    }

    /** Of envelopes 1 and 2 the voter of the first is known to have voted. */
    @ParameterizedTest
    @CsvSource({
        "reject, count, yes no abstains, tied: count, 2",
        "reject, count, no no yes, failed: count, 2",
        "count, count, yes no abstains, tied: count, 2",
        "count, count, yes yes no, carried: count, 1 2",
        "reject, reject, yes no abstains, tied: reject, 1 2"
    })
    void counts_nobody_known_to_have_voted_unless_a_motion_to_count_carries(
            String asks, String means, String votes, String result, String settled) {
        board.asks(asks).rules("board", "majority", means, means);
        board.knownToHaveVoted = Set.of(new EnvelopeNumber("1"));
        assertThat(board.comesTo(votes)).isEqualTo(result);
        assertThat(((VoteResult.Stands) board.votes(votes)).envelopes())
                .extracting(EnvelopeNumber::value)
                .containsExactlyInAnyOrder(settled.split(" "));
    }

    @Test
    void records_which_envelope_stays_open_although_the_vote_counted_the_others() {
        board.rules("board", "majority", "count", "count");
        assertThat(((VoteResult.Stands) board.votes("yes no abstains")).recorded())
                .isEqualTo("The motion to reject was tied, 1 to 1: count.");
        board.knownToHaveVoted = Set.of(new EnvelopeNumber("2"));
        assertThat(((VoteResult.Stands) board.votes("yes no abstains")).recorded())
                .isEqualTo("The motion to reject was tied, 1 to 1: count. 2 stays open, because records show that the"
                        + " voter voted. It counts only if a motion to count carries.");
    }

    @Test
    void stays_open_where_every_voter_is_known_to_have_voted() {
        board.rules("board", "majority", "count", "count");
        board.knownToHaveVoted = Set.of(new EnvelopeNumber("1"), new EnvelopeNumber("2"));
        assertThat(board.comesTo("yes no abstains")).isEqualTo("tied: stays open");
        assertThat(((VoteResult.Stands) board.votes("yes no abstains")).recorded())
                .endsWith("stays open. These stay open, because records show that the voters voted: 1, 2."
                        + " They count only if a motion to count carries.");
    }

    @ParameterizedTest
    @CsvSource({
        "reject, count, failed: count",
        "reject, reject, failed: stays open",
        "reject, stays_open, failed: stays open",
        "count, count, failed: stays open",
        "count, reject, failed: reject",
        "count_in_part, count, failed: stays open",
        "count_in_part, reject, failed: reject"
    })
    void takes_a_failed_motion_as_the_pack_says_but_never_as_what_it_asked(String asks, String failed, String result) {
        board.asks(asks).rules("board", "majority", "none", failed);
        assertThat(board.comesTo("yes no no")).isEqualTo(result);
    }

    @ParameterizedTest
    @CsvSource({"yes no no, failed: stays open", "no no no, failed: reject", "no no abstains, failed: reject"})
    void rejects_by_a_failed_motion_only_where_the_same_votes_could_have_rejected(String votes, String result) {
        board.asks("count").rules("board", "unanimous", "reject", "reject");
        assertThat(board.comesTo(votes)).isEqualTo(result);
    }

    @Test
    void rejects_by_no_tie_where_a_rejection_must_be_unanimous() {
        board.asks("count").rules("board", "unanimous", "reject", "reject");
        assertThat(board.comesTo("yes no abstains")).isEqualTo("tied: stays open");
    }

    @ParameterizedTest
    @CsvSource({
        "reject, yes, carried: reject",
        "reject, no, failed: count",
        "count, yes, carried: count",
        "count, no, failed: stays open"
    })
    void lets_a_single_official_decide_alone(String asks, String vote, String result) {
        board.official().asks(asks).rules("official", "unanimous", "none", "count");
        board.pack.without(Rules.VOTE_TO_REJECT);
        assertThat(board.comesTo(vote)).isEqualTo(result);
    }

    @Test
    void takes_an_officials_no_to_counting_as_a_rejection_where_the_pack_says_so() {
        board.official().asks("count").rules("official", "one", "none", "reject");
        assertThat(board.comesTo("no")).isEqualTo("failed: reject");
    }

    @ParameterizedTest
    @CsvSource({
        "yes yes no, yes yes yes, carried: reject",
        "yes yes no, yes no no, failed: count",
        "yes no no, yes no no, failed: count",
        "yes yes yes, yes no abstains, tied: stays open",
        "yes no no, yes no abstains, failed: count"
    })
    void needs_both_of_two_bodies(String first, String second, String result) {
        board.rules("two_bodies", "majority", "stays_open", "count");
        assertThat(board.comesTo(first, second)).isEqualTo(result);
    }

    @Test
    void rejects_by_no_failed_motion_that_one_of_two_bodies_carried() {
        board.asks("count").rules("two_bodies", "majority", "stays_open", "reject");
        assertThat(board.comesTo("yes yes no", "no no yes")).isEqualTo("failed: stays open");
        assertThat(board.comesTo("no no no", "no no yes")).isEqualTo("failed: reject");
    }

    @Test
    void says_what_was_moved_how_it_went_and_on_which_rules_it_rests() {
        VoteResult.Stands result = (VoteResult.Stands) board.votes("yes no abstains");

        assertThat(result.words()).isEqualTo("The motion to reject was tied, 1 to 1: count.");
        assertThat(result.restsOn())
                .extracting(ResolvedRule::rule)
                .containsExactly(Rules.DECIDER, Rules.VOTE_TO_REJECT, Rules.TIE_MEANS);
    }

    @Test
    void says_so_where_it_stays_open() {
        VoteResult.Stands result = (VoteResult.Stands) board.votes("yes no no");
        assertThat(result.words()).isEqualTo("The motion to reject failed, 1 to 2: stays open.");
    }

    @Test
    void settles_a_consent_group_without_the_envelopes_pulled_out() {
        board.motion = SmallBoard.motion(DecisionOutcome.COUNT, Set.of(new EnvelopeNumber("2")));
        assertThat(((VoteResult.Stands) board.votes("yes yes yes")).envelopes())
                .containsExactly(new EnvelopeNumber("1"));
    }
}
