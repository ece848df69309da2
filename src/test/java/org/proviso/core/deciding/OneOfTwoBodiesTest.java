package org.proviso.core.deciding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.Rules;

/** The vote of one of two bodies, before the other has voted. */
class OneOfTwoBodiesTest {

    private final SmallBoard board = new SmallBoard();

    private VoteResult votes(String votes) {
        BodyVote poll = new BodyVote(board.body, board.present, Map.of(), SmallBoard.cast(votes));
        return VoteMeaning.ofOneOfTwo(board.motion, poll, board.pack.book(), board.at);
    }

    @ParameterizedTest
    @CsvSource({
        "reject, majority, yes yes no, 'The motion to reject carried, 2 to 1: waiting for the other body.'",
        "reject, unanimous, yes yes no, 'The motion to reject failed, 2 to 1: waiting for the other body.'",
        "reject, majority, yes no abstains, 'The motion to reject was tied, 1 to 1: waiting for the other body.'",
        "count, unanimous, yes yes no, 'The motion to count carried, 2 to 1: waiting for the other body.'"
    })
    void ends_as_its_votes_say_and_settles_nothing(String asks, String toReject, String votes, String words) {
        board.asks(asks).rules("two_bodies", toReject, "count", "count");
        assertThat(((VoteResult.Stands) votes(votes)).words()).isEqualTo(words);
        assertThat(((VoteResult.Stands) votes(votes)).staysOpen()).isTrue();
    }

    @Test
    void does_not_stand_where_a_vote_of_one_body_would_not() {
        board.rules("two_bodies", "majority", "count", "count");
        assertThat(refused("yes yes -")).isEqualTo(Why.VOTE_MISSING);
        board.pack.without(Rules.VOTE_TO_REJECT);
        assertThat(refused("yes yes no")).isEqualTo(Why.RULE_NOT_SETTLED);
        board.rules("two_bodies", "majority", "count", "count").pack.fromMemory(Rules.DECIDER);
        assertThat(refused("yes yes no")).isEqualTo(Why.RULE_NOT_SETTLED);
        board.at = SmallBoard.OPEN.minusDays(30);
        board.pack = ChangedPack.of("example");
        assertThat(refused("yes yes no")).isEqualTo(Why.GATE_NOT_OPEN);
    }

    private Why refused(String votes) {
        return ((VoteResult.Refused) votes(votes)).refusal().why();
    }
}
