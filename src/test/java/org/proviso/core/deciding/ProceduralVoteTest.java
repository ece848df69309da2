package org.proviso.core.deciding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.Refusal;

/** Motions that decide no envelope. */
class ProceduralVoteTest {

    private final SmallBoard board = new SmallBoard();

    private VoteResult votes(Set<EnvelopeNumber> envelopes, String... bodies) {
        List<BodyVote> polls = Stream.of(bodies)
                .map(votes -> new BodyVote(board.body, board.present, Map.of(), SmallBoard.cast(votes)))
                .toList();
        return ProceduralVote.voteResult("table", envelopes, polls, board.pack.resolved());
    }

    @ParameterizedTest
    @CsvSource({
        "yes yes no, 'The motion to table carried, 2 to 1.'",
        "yes abstains abstains, 'The motion to table carried, 1 to 0.'",
        "yes no abstains, 'The motion to table was tied, 1 to 1.'",
        "no no yes, 'The motion to table failed, 1 to 2.'"
    })
    void a_majority_of_the_votes_cast_carries_it_and_settles_no_envelope(String votes, String words) {
        VoteResult.Stands result = (VoteResult.Stands) votes(Set.of(new EnvelopeNumber("1")), votes);
        assertThat(result.words()).isEqualTo(words);
        assertThat(result.staysOpen()).isTrue();
        assertThat(result.restsOn()).isEmpty();
    }

    @Test
    void two_bodies_must_both_carry_it() {
        assertThat(((VoteResult.Stands) votes(Set.of(new EnvelopeNumber("1")), "yes yes no", "no no yes")).words())
                .isEqualTo("The motion to table failed, 2 to 1 and 1 to 2.");
    }

    @Test
    void a_vote_that_does_not_stand_is_refused_as_any_other() {
        assertThat(votes(Set.of(new EnvelopeNumber("1")), "yes yes -"))
                .isInstanceOfSatisfying(
                        VoteResult.Refused.class,
                        refused -> assertThat(refused.refusal())
                                .returns(Refusal.Why.VOTE_MISSING, Refusal::why)
                                .returns("No vote is recorded for cal.", Refusal::words));
        assertThat(votes(Set.of(), "yes yes yes")).isInstanceOf(VoteResult.Refused.class);
    }
}
