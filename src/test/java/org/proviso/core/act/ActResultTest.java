package org.proviso.core.act;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.Refusal.Why;

class ActResultTest {

    private static final Refusal CLOSED = Refusal.of(Why.ELECTION_CLOSED, "The election is closed.");

    @Test
    void an_act_made_of_several_goes_on_until_one_is_refused() {
        List<Integer> reached = new ArrayList<>();
        ActResult<Integer> result = ActResult.accepted(1)
                .then(number -> ActResult.accepted(number + 1))
                .then(two -> ActResult.<Integer>refused(CLOSED))
                .then(never -> {
                    reached.add(never);
                    return ActResult.accepted(never);
                });
        assertThat(result).isEqualTo(ActResult.refused(CLOSED));
        assertThat(result.isRefused()).isTrue();
        assertThat(result.ifAccepted()).isEmpty();
        assertThat(reached).isEmpty();
    }

    @Test
    void what_is_new_can_be_told_another_way() {
        ActResult<String> told = ActResult.accepted(7).map(number -> "batch " + number);
        assertThat(told.ifAccepted()).contains("batch 7");
        assertThat(told.refusals()).isEmpty();
        assertThat(told.isRefused()).isFalse();
        assertThat(ActResult.<Integer>refused(CLOSED).map(number -> "batch " + number))
                .isEqualTo(ActResult.refused(CLOSED));
    }

    @Test
    void reasons_are_read_in_their_order_each_after_its_envelope() {
        Refusal own = Refusal.of(Why.OWN_ACT, "You proposed this.").about(new EnvelopeNumber("P-7"));
        assertThat(new ActResult.Refused<>(List.of(CLOSED, own)).words())
                .isEqualTo("The election is closed. P-7: You proposed this.");
    }

    @Test
    void nothing_is_refused_without_a_reason() {
        assertThatThrownBy(() -> new ActResult.Refused<>(List.of())).hasMessageContaining("for a reason");
    }

    @Test
    void a_refusal_names_the_part_of_the_command_that_is_wrong() {
        Refusal taken = Refusal.at("receiptNo", Why.NUMBER_TAKEN, "That number is taken.");
        assertThat(taken.field()).isEqualTo("receiptNo");
        assertThat(taken.spoken()).isEqualTo("That number is taken.");
        assertThat(Refusal.when(false, Why.OWN_ACT, "never")).isEmpty();
        assertThat(Refusal.when(true, Why.OWN_ACT, "now")).contains(Refusal.of(Why.OWN_ACT, "now"));
    }
}
