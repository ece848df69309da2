package org.proviso.core.deciding;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.Election.DecidingBody;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.Refusal;
import org.proviso.core.calendar.ClosedDayRule;
import org.proviso.core.calendar.DeadlineAnchor;
import org.proviso.core.calendar.DeadlineOffset;
import org.proviso.core.calendar.DeadlineRule;
import org.proviso.core.calendar.TimeOfDay;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.Rules;

/** Votes that do not stand, and why. */
class VoteRefusedTest {

    private final SmallBoard board = new SmallBoard();

    @Test
    void refuses_a_vote_without_a_quorum() {
        board.present.retainAll(Set.of(new UserName("ana")));
        assertThat(board.comesTo("yes")).isEqualTo("no_quorum");
        assertThat(board.refusal("yes").words()).isEqualTo("No quorum: 1 taking part, 2 needed.");
    }

    @ParameterizedTest
    @CsvSource({"yes yes recused, carried: reject", "yes recused recused, no_quorum"})
    void counts_no_recused_member_toward_the_quorum(String votes, String result) {
        assertThat(board.comesTo(votes)).isEqualTo(result);
    }

    @Test
    void refuses_the_vote_of_a_member_who_is_not_there() {
        board.present.remove(new UserName("cal"));
        assertThat(board.comesTo("yes yes no")).isEqualTo("not_present");
        assertThat(board.refusal("yes yes no").words()).isEqualTo("Not present, but a vote is recorded: cal.");
    }

    @Test
    void refuses_the_vote_of_a_member_recused_from_one_envelope_of_the_group() {
        board.recusals.put(new UserName("ben"), Set.of(new EnvelopeNumber("2"), new EnvelopeNumber("99")));
        assertThat(board.comesTo("yes yes yes")).isEqualTo("recused_member_voted");
        assertThat(board.refusal("yes yes yes").words()).startsWith("Recused, but a vote is recorded: ben.");
        assertThat(board.comesTo("yes recused yes")).isEqualTo("carried: reject");
        assertThat(board.comesTo("yes - yes")).isEqualTo("carried: reject");
    }

    @Test
    void lets_a_member_vote_once_the_envelope_recused_from_is_pulled_out() {
        board.recusals.put(new UserName("ben"), Set.of(new EnvelopeNumber("2")));
        board.motion = SmallBoard.motion(DecisionOutcome.REJECT, Set.of(new EnvelopeNumber("2")));
        assertThat(board.comesTo("yes yes yes")).isEqualTo("carried: reject");
    }

    @Test
    void refuses_a_vote_that_lacks_one_of_a_member_present() {
        assertThat(board.comesTo("yes yes -")).isEqualTo("vote_missing");
        assertThat(board.refusal("- yes -").words()).isEqualTo("No vote is recorded for ana, cal.");
    }

    @Test
    void decides_nothing_by_silence() {
        board.rules("board", "majority", "reject", "reject");
        assertThat(board.comesTo("abstains abstains abstains")).isEqualTo("nobody_voted");
    }

    @Test
    void refuses_more_members_than_the_body_has() {
        board.body = new DecidingBody(2, 2);
        assertThat(board.comesTo("yes yes yes")).isEqualTo("more_present_than_members");
    }

    @ParameterizedTest
    @CsvSource({"CARRIED, carried", "FAILED, failed", "TIED, tied", "WITHDRAWN, withdrawn"})
    void refuses_a_motion_already_decided(MotionResult before, String word) {
        board.motion = new Motion(DecisionOutcome.COUNT, Set.of(new EnvelopeNumber("1")), Set.of(), before);
        assertThat(board.comesTo("yes yes yes")).isEqualTo("motion_already_decided");
        assertThat(board.refusal("yes yes yes").words()).isEqualTo("This motion was already " + word + ".");
    }

    @Test
    void refuses_a_group_of_which_every_envelope_was_pulled_out() {
        board.motion =
                SmallBoard.motion(DecisionOutcome.COUNT, Set.of(new EnvelopeNumber("1"), new EnvelopeNumber("2")));
        assertThat(board.comesTo("yes yes yes")).isEqualTo("nothing_put");
    }

    @ParameterizedTest
    @CsvSource({"board, 0", "board, 2", "official, 2", "two_bodies, 1", "two_bodies, 3"})
    void refuses_another_number_of_bodies_than_the_pack_names(String kind, int polls) {
        board.rules(kind, "majority", "count", "count");
        String[] votes = new String[polls];
        Arrays.fill(votes, "yes yes yes");
        assertThat(board.comesTo(votes)).isEqualTo("wrong_number_of_bodies");
        assertThat(board.refusal(votes).reference()).isNotNull();
    }

    /** In the example pack the gate opens two business days after November 3, at 9 am. */
    @ParameterizedTest
    @CsvSource({"2026-11-05T08:59, gate_not_open", "2026-11-05T09:00, carried: reject"})
    void refuses_a_vote_before_the_gate_has_opened(LocalDateTime at, String result) {
        board.at = at;
        assertThat(board.comesTo("yes yes yes")).isEqualTo(result);
    }

    @Test
    void says_when_the_gate_opens_and_where_that_is_written() {
        board.at = LocalDateTime.of(2026, 11, 4, 8, 0);
        Refusal refusal = board.refusal("yes yes yes");
        assertThat(refusal.words()).isEqualTo("Not before 11/05/2026 9:00 am.");
        assertThat(refusal.reference().section()).isEqualTo("9.1");
    }

    @Test
    void refuses_while_the_day_that_the_gate_counts_from_is_not_known() {
        board.pack.with(
                Rules.GATE_DECISION,
                new RuleValue.Dated(new DeadlineRule(
                        DeadlineAnchor.BOARD_MEETING,
                        new DeadlineOffset.Days(1),
                        TimeOfDay.parse("09:00").orElseThrow(),
                        ClosedDayRule.SAME_DAY)));
        assertThat(board.comesTo("yes yes yes")).isEqualTo("gate_not_open");
        assertThat(board.refusal("yes yes yes").words())
                .contains("the earliest time an envelope may be decided", "not known");
    }

    @ParameterizedTest
    @CsvSource({
        "decider.kind, reject, yes yes yes",
        "gate.decision, reject, yes yes yes",
        "decider.vote_to_reject, reject, yes yes yes",
        "decider.tie_means, reject, yes no abstains",
        "decider.failed_motion_means, reject, yes no no",
        "decider.failed_motion_means, count, yes no no"
    })
    void rests_on_no_rule_that_nobody_read(String key, String asks, String votes) {
        Rule rule = Rule.find(key).orElseThrow();
        board.asks(asks).pack.fromMemory(rule);
        Refusal remembered = board.refusal(votes);
        assertThat(remembered.why()).isEqualTo(Refusal.Why.RULE_NOT_SETTLED);
        assertThat(remembered.words()).contains(key, "county ruling", "from memory");

        board.pack.without(rule);
        assertThat(board.refusal(votes).words()).contains(key, "no source settles it");

        ResolvedPack ruled = new SmallBoard().pack.resolved();
        board.pack.with(rule, ruled.of(rule).value(), Basis.RULED);
        assertThat(board.votes(votes)).isInstanceOf(VoteResult.Stands.class);
    }

    @Test
    void needs_the_vote_to_reject_for_no_motion_that_cannot_reject() {
        board.asks("count").pack.without(Rules.VOTE_TO_REJECT);
        assertThat(board.comesTo("yes yes no")).isEqualTo("carried: count");
        assertThat(board.comesTo("yes no no")).isEqualTo("failed: stays open");
    }

    @Test
    void rejects_by_no_failed_motion_while_the_vote_to_reject_is_not_settled() {
        board.asks("count").rules("board", "majority", "none", "reject");
        board.pack.without(Rules.VOTE_TO_REJECT);
        assertThat(board.comesTo("no no no")).isEqualTo("rule_not_settled");
    }

    @Test
    void lets_one_vote_reject_only_where_one_person_decides() {
        board.rules("board", "one", "count", "stays_open");
        assertThat(board.comesTo("yes no no")).isEqualTo("rule_not_settled");
        assertThat(board.refusal("yes no no").words()).contains("several members decide");

        board.official();
        assertThat(board.comesTo("yes")).isEqualTo("carried: reject");
    }
}
