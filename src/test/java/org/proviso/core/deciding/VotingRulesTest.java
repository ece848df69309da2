package org.proviso.core.deciding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.rules.InformationRules;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.Rules;
import org.proviso.core.rules.StateRules;

/** Vote and quorum: what the pack says, and common practice where it is silent. */
class VotingRulesTest {

    private final SmallBoard board = new SmallBoard().rules("board", "majority", "count", "stays_open");

    private String words() {
        return String.join(
                " ",
                VotingRules.of(board.pack.resolved()).inWords(board.body).stream()
                        .map(line -> line.words() + " (" + line.source() + ")")
                        .toList());
    }

    @Test
    void says_the_defaults_as_common_practice() {
        assertThat(words())
                .isEqualTo("To reject: 2 of 3 members. (Made for a test (2026); of the members by"
                        + " common practice) To count: a majority of the votes cast. (common practice) Quorum: 2"
                        + " present. A recused member does not count toward the quorum. (common practice)");
    }

    @Test
    void knows_common_practice_of_the_rules_on_vote_and_quorum_that_a_pack_may_leave_out() {
        assertThat(VotingRules.practice(InformationRules.VOTE_TO_COUNT)).contains("a majority of the votes cast");
        assertThat(VotingRules.practice(StateRules.QUORUM_COUNTS_RECUSED)).contains("no");
        assertThat(VotingRules.practice(Rules.VOTE_TO_REJECT)).isEmpty();
    }

    @Test
    void says_what_the_pack_gives() {
        board.pack
                .word(Rules.VOTE_TO_REJECT, "unanimous")
                .with(StateRules.QUORUM_COUNTS_RECUSED, new RuleValue.Flag(true));
        assertThat(words())
                .startsWith("To reject: no vote against. (Made for a test (2026)) ")
                .contains("A recused member counts toward the quorum.");
    }

    @Test
    void an_official_votes_with_nobody() {
        board.pack.word(Rules.DECIDER, "official");
        assertThat(VotingRules.of(board.pack.resolved()).inWords(board.body)).isEmpty();
    }

    @Test
    void a_recused_member_counts_toward_the_quorum_only_where_the_rules_say_so() {
        board.present.remove(new UserName("cal"));
        board.recusals.put(new UserName("ben"), Set.of(new EnvelopeNumber("1")));
        assertThat(board.refusal("yes").words()).isEqualTo("No quorum: 1 taking part, 2 needed.");
        board.pack.word(Rules.VOTE_TO_REJECT, "majority_of_votes_cast");
        board.pack.with(StateRules.QUORUM_COUNTS_RECUSED, new RuleValue.Flag(true));
        assertThat(board.comesTo("yes")).isEqualTo("carried: reject");
    }

    @Test
    void what_the_pack_has_from_memory_waits_for_a_county_ruling() {
        board.pack.with(StateRules.QUORUM_COUNTS_RECUSED, new RuleValue.Flag(true));
        board.pack.fromMemory(StateRules.QUORUM_COUNTS_RECUSED);
        assertThat(board.comesTo("yes yes yes")).as("nobody is recused").isEqualTo("carried: reject");
        board.recusals.put(new UserName("ben"), Set.of(new EnvelopeNumber("1")));
        assertThat(board.comesTo("yes - yes")).isEqualTo("rule_not_settled");
        assertThat(words()).contains("Quorum: not settled. The office must sign a county ruling on");
        board.recusals.clear();
        board.asks("count")
                .pack
                .word(InformationRules.VOTE_TO_COUNT, "majority")
                .fromMemory(InformationRules.VOTE_TO_COUNT);
        assertThat(board.comesTo("yes yes yes")).isEqualTo("rule_not_settled");
    }
}
