package org.proviso.canvass;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;

/** A total counts as explained only by two signatures, for the difference it was written for. */
class ExplainedBalancesTest {

    private static final CanvassPlace POND = CanvassPlace.location("Mill Pond Library", VotingHours.REGULAR);
    private static final CanvassPlace HALL = CanvassPlace.location("Town Hall", VotingHours.REGULAR);
    private static final CanvassPlace COUNTY = CanvassPlace.county(VotingHours.REGULAR);

    private static BalanceExplanation explanation(
            CanvassPlace where, BalanceRule identity, @Nullable Integer difference, @Nullable String signer) {
        return new BalanceExplanation(
                new ElectionId("e"),
                1,
                where,
                identity,
                difference,
                "The bag was torn.",
                new UserName("carl"),
                Instant.EPOCH,
                signer == null ? null : new UserName(signer),
                signer == null ? null : Instant.EPOCH,
                0);
    }

    private static BalanceExplanation signed(CanvassPlace where, @Nullable Integer difference) {
        return explanation(where, BalanceRule.SENT_BACK_ARRIVED, difference, "dora");
    }

    private static BalanceResult off(CanvassPlace where, int by) {
        return new BalanceResult.Differs(where, BalanceRule.SENT_BACK_ARRIVED, by, "It differs.");
    }

    private static BalanceResult unknown(CanvassPlace where) {
        return new BalanceResult.CannotBeChecked(
                where, BalanceRule.SENT_BACK_ARRIVED, List.of(Figure.SENT_BACK), "Not noted.");
    }

    private static BalanceResult holds(CanvassPlace where) {
        return new BalanceResult.Holds(where, BalanceRule.SENT_BACK_ARRIVED, "It agrees.");
    }

    /** Which of the totals are settled, with these explanations. */
    private static List<Boolean> settled(List<BalanceResult> balances, BalanceExplanation... explanations) {
        return new ExplainedBalances(List.of(explanations))
                .of(balances).stream().map(BalanceResult::isSettled).toList();
    }

    @Test
    void by_two_signatures_and_for_the_same_difference_at_the_same_place() {
        List<BalanceResult> one = List.of(off(POND, 1));
        assertThat(settled(one, signed(POND, 1))).containsExactly(true);
        assertThat(settled(one)).containsExactly(false);
        assertThat(settled(one, explanation(POND, BalanceRule.SENT_BACK_ARRIVED, 1, null)))
                .as("one signature")
                .containsExactly(false);
        assertThat(settled(one, signed(POND, 2))).as("another number").containsExactly(false);
        assertThat(settled(one, signed(HALL, 1))).as("another place").containsExactly(false);
        assertThat(settled(one, explanation(POND, BalanceRule.ISSUED_ARRIVED, 1, "dora")))
                .as("another total")
                .containsExactly(false);
        assertThat(settled(one, signed(POND, null))).as("a missing figure").containsExactly(false);
        assertThat(settled(one, signed(CanvassPlace.location("Mill Pond Library", VotingHours.EXTENDED), 1)))
                .as("other hours")
                .containsExactly(false);
    }

    @Test
    void the_county_by_the_sum_of_its_locations() {
        List<BalanceResult> both = List.of(off(POND, 1), off(HALL, 2), off(COUNTY, 3));
        assertThat(settled(both, signed(POND, 1), signed(HALL, 2))).containsExactly(true, true, true);
        assertThat(settled(both, signed(POND, 1)))
                .as("one location is not explained")
                .containsExactly(true, false, false);
        List<BalanceResult> more = List.of(off(POND, 1), holds(HALL), off(COUNTY, 3));
        assertThat(settled(more, signed(POND, 1)))
                .as("the county is off by more")
                .containsExactly(true, true, false);
        assertThat(settled(List.of(holds(POND), off(COUNTY, 1))))
                .as("the county alone")
                .containsExactly(true, false);
    }

    @Test
    void a_figure_that_nobody_can_tell_is_explained_for_the_county_too() {
        List<BalanceResult> lost = List.of(unknown(POND), holds(HALL), unknown(COUNTY));
        assertThat(settled(lost, signed(POND, null))).containsExactly(true, true, true);
        List<BalanceResult> own = List.of(off(POND, 1), unknown(COUNTY));
        assertThat(settled(own, signed(POND, 1)))
                .as("the county lacks another figure")
                .containsExactly(true, false);
    }

    @ParameterizedTest
    @EnumSource(
            value = BalanceRule.class,
            names = {"EVERY_ONE_HAS_AN_OUTCOME", "NOTHING_PENDING", "STATES", "LOCATIONS", "REJECTION_REASONS"})
    void undecided_votes_and_the_programs_own_sums_are_never_explained(BalanceRule identity) {
        assertThat(identity.mayBeExplained()).isFalse();
        List<BalanceRule> others = new ArrayList<>(List.of(BalanceRule.values()));
        others.removeIf(rule -> !rule.mayBeExplained());
        assertThat(others).hasSize(12).doesNotContain(identity);
    }
}
