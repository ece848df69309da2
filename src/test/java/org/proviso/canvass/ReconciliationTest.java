package org.proviso.canvass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.canvass.SmallCounty.MILL_POND;
import static org.proviso.canvass.SmallCounty.TOWN_HALL;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The identities of the canvass, on a county of two voting locations. */
class ReconciliationTest {

    private static final Set<BalanceRule> ALL = EnumSet.allOf(BalanceRule.class);

    @Test
    void holds_in_every_location_and_the_county_where_all_adds_up() {
        List<BalanceResult> balances = Reconciliation.reconcile(SmallCounty.accounts(MILL_POND, TOWN_HALL), ALL);
        assertThat(balances).allMatch(BalanceResult.Holds.class::isInstance).hasSize(10 + 10 + 17);
        assertThat(balances.get(0).place()).isEqualTo("Mill Pond Library");
        assertThat(balances.get(36).place()).isEqualTo("The county");
    }

    @Test
    void says_in_a_plain_sentence_what_does_not_add_up() {
        PlaceFigures figures = MILL_POND.with(Figure.RECEIVED, 10);
        assertThat(differing(SmallCounty.accounts(figures, TOWN_HALL)))
                .contains(
                        "Mill Pond Library sent back 11 envelopes and logged 10.",
                        "Mill Pond Library issued 12 envelopes and logged 10, explained the absence of 1, which makes 11.");
    }

    @Test
    void says_by_how_many_and_which_way_it_differs() {
        BalanceResult.Differs less = onlyOne(MILL_POND.with(Figure.SENT_BACK, 9), BalanceRule.SENT_BACK_ARRIVED);
        BalanceResult.Differs more = onlyOne(MILL_POND.with(Figure.SENT_BACK, 12), BalanceRule.SENT_BACK_ARRIVED);
        assertThat(less.by()).isEqualTo(-2);
        assertThat(more.by()).isOne();
    }

    @Test
    void a_changed_seal_and_a_loose_ballot_are_differences_of_their_own() {
        PlaceFigures figures = MILL_POND.with(Figure.CHANGED_SEALS, 1).with(Figure.LOOSE_BALLOTS, 2);
        assertThat(differing(SmallCounty.accounts(figures, TOWN_HALL)))
                .containsExactly(
                        "Mill Pond Library had 1 changed bag seal.",
                        "Mill Pond Library sent 2 loose ballots.",
                        "The county had 1 changed bag seal.",
                        "The county sent 2 loose ballots.");
    }

    @Test
    void a_ballot_scanned_in_error_is_part_of_the_stock() {
        PlaceFigures figures = MILL_POND.with(Figure.ISSUED, 11).with(Figure.SCANNED_IN_ERROR, 1);
        assertThat(Reconciliation.reconcile(SmallCounty.accounts(figures, TOWN_HALL), Set.of(BalanceRule.STOCK)))
                .allMatch(BalanceResult.Holds.class::isInstance);
    }

    @Test
    void takes_empty_envelopes_off_the_ballots_handed_off() {
        CanvassFigures sound = SmallCounty.accounts(MILL_POND, TOWN_HALL);
        CanvassFigures none = new CanvassFigures(
                VotingHours.REGULAR, sound.locations(), sound.ofCounty().with(Figure.EMPTY, 0));
        assertThat(differing(none))
                .containsExactly("The county handed off 11 ballots and counted 10, counted in part 2, found empty 0,"
                        + " which makes 12.");
    }

    @Test
    void says_which_number_nobody_has_noted() {
        PlaceFigures silent = TOWN_HALL.without(Figure.UNUSED);
        assertThat(Reconciliation.reconcile(SmallCounty.accounts(MILL_POND, silent), Set.of(BalanceRule.STOCK)))
                .extracting(BalanceResult::words)
                .containsExactly(
                        "Mill Pond Library was given 35 envelopes and issued 12, spoiled 1, brought back unused 20,"
                                + " reported missing 2, scanned in error 0, which makes 35.",
                        "Town Hall cannot be checked. Not noted: how many envelopes it brought back unused.",
                        "The county cannot be checked. Not noted: how many envelopes it brought back unused.");
    }

    @ParameterizedTest
    @EnumSource(value = Figure.class, mode = EnumSource.Mode.EXCLUDE, names = "BY_LOCATION")
    void never_takes_a_number_that_is_not_noted_for_zero(Figure figure) {
        CanvassFigures sound = SmallCounty.accounts(MILL_POND, TOWN_HALL);
        CanvassFigures silent = new CanvassFigures(
                VotingHours.REGULAR,
                Map.of("Mill Pond Library", MILL_POND.without(figure), "Town Hall", TOWN_HALL.without(figure)),
                sound.ofCounty().without(figure));
        assertThat(Reconciliation.reconcile(silent, ALL))
                .noneMatch(BalanceResult.Differs.class::isInstance)
                .filteredOn(BalanceResult.CannotBeChecked.class::isInstance)
                .isNotEmpty()
                .allMatch(result -> result.identity().figures().contains(figure));
    }

    @Test
    void asks_for_nothing_pending_only_at_certification() {
        CanvassFigures pending = SmallCounty.accounts(MILL_POND.with(Figure.HELD_BY_LAW, 2), TOWN_HALL);
        assertThat(Reconciliation.reconcile(pending, EnumSet.complementOf(EnumSet.of(BalanceRule.NOTHING_PENDING))))
                .allMatch(BalanceResult.Holds.class::isInstance);
        assertThat(differing(pending))
                .containsExactly(
                        "Mill Pond Library left undecided 3 envelopes and must hold for a late identification or a"
                                + " court 2.",
                        "The county left undecided 3 envelopes and must hold for a late identification or a court 2.");
    }

    @Test
    void keeps_extended_hours_apart() {
        CanvassFigures late = SmallCounty.accounts(VotingHours.EXTENDED, Map.of("Town Hall", TOWN_HALL));
        assertThat(Reconciliation.reconcile(late, ALL))
                .allMatch(BalanceResult.Holds.class::isInstance)
                .extracting(BalanceResult::place)
                .containsOnly("Town Hall in extended hours", "The county in extended hours");
    }

    @Test
    void has_the_identities_of_the_offices_list() {
        assertThat(ALL).extracting(BalanceRule::number).containsOnly(1, 2, 3, 4, 5, 6, 7, 9, 11, 12);
    }

    @ParameterizedTest
    @CsvSource({
        "18, 18, 0, ''",
        "18, 20, 0, ''",
        "18, 17, 1, ''",
        "18, 17, 0, '17 are received, and 18 were before; a correction of 0 is logged.'",
        "18, 16, 1, '16 are received, and 18 were before; a correction of 1 is logged.'"
    })
    void finds_what_became_less_without_a_correction(int before, int after, int corrected, String words) {
        List<String> fallen = DailyProgressRule.fallen(
                MILL_POND.with(Figure.RECEIVED, before),
                MILL_POND.with(Figure.RECEIVED, after),
                Map.of(DailyProgressRule.RECEIVED, corrected));
        assertThat(String.join(" ", fallen)).isEqualTo(words);
    }

    @Test
    void lets_a_rejection_turn_into_a_count_but_finds_a_count_that_vanished() {
        PlaceFigures turned = MILL_POND.with(Figure.REJECTED, 0).with(Figure.COUNTED, 6);
        assertThat(DailyProgressRule.fallen(MILL_POND, turned, Map.of())).isEmpty();
        assertThat(DailyProgressRule.fallen(turned, MILL_POND, Map.of()))
                .containsExactly("7 are counted, and 8 were before; a correction of 0 is logged.");
    }

    @Test
    void cannot_check_progress_without_both_numbers() {
        assertThat(DailyProgressRule.fallen(MILL_POND, MILL_POND.without(Figure.REJECTED), Map.of()))
                .containsExactly("It cannot be checked that no fewer are decided than before.");
        assertThat(DailyProgressRule.fallen(MILL_POND.without(Figure.COUNTED), MILL_POND, Map.of()))
                .hasSize(2);
    }

    private static BalanceResult.Differs onlyOne(PlaceFigures millPond, BalanceRule identity) {
        return (BalanceResult.Differs)
                Reconciliation.reconcile(SmallCounty.accounts(millPond, TOWN_HALL), Set.of(identity))
                        .get(0);
    }

    private static List<String> differing(CanvassFigures accounts) {
        return Reconciliation.reconcile(accounts, ALL).stream()
                .filter(BalanceResult.Differs.class::isInstance)
                .map(BalanceResult::words)
                .toList();
    }
}
