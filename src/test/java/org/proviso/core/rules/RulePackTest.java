package org.proviso.core.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.CountyRuling;
import org.proviso.core.CourtOrder;
import org.proviso.files.packs.RulePacks;

class RulePackTest {

    private static final LocalDate ELECTION = LocalDate.of(2026, 11, 3);

    @ParameterizedTest
    @CsvSource({"2019-12-31, ''", "2020-01-01, wait", "2023-12-31, wait", "2024-01-01, apart", "2030-11-05, apart"})
    void has_the_value_in_force_on_the_election_date(LocalDate electionDate, String value) {
        RulePack pack = pack(
                Map.of(Rules.EXTENDED_PENDING, List.of(dated("2020-01-01", "wait"), dated("2024-01-01", "apart"))));

        assertThat(pack.inForce(Rules.EXTENDED_PENDING, electionDate)
                        .map(found -> found.value().spelled())
                        .orElse(""))
                .isEqualTo(value);
        assertThat(pack.inForce(Rules.MOVES, electionDate)).isEmpty();
    }

    @Test
    void lies_over_a_floor_which_speaks_where_it_says_nothing() {
        RulePack floor = pack(Map.of(
                Rules.MOVES,
                List.of(dated("2004-01-01", "either")),
                Rules.PRIMARY,
                List.of(dated("2004-01-01", "own_party"))));
        RulePack state = pack(Map.of(Rules.MOVES, List.of(dated("2020-01-01", "new_address"))))
                .over(floor);

        assertThat(value(state, Rules.MOVES, ELECTION)).isEqualTo("new_address");
        assertThat(value(state, Rules.PRIMARY, ELECTION)).isEqualTo("own_party");
        // Before its own first date the state's pack says nothing.
        assertThat(value(state, Rules.MOVES, LocalDate.of(2018, 11, 6))).isEqualTo("either");
        assertThat(state.values().get(Rules.MOVES)).extracting(DatedValue::from).isSorted();
    }

    @Test
    void hides_the_floor_from_the_first_date_of_its_own_on() {
        RulePack floor = pack(
                Map.of(Rules.MOVES, List.of(dated("2004-01-01", "either"), dated("2022-01-01", "registered_address"))));
        RulePack state = pack(Map.of(Rules.MOVES, List.of(dated("2020-01-01", "new_address"))))
                .over(floor);

        assertThat(value(state, Rules.MOVES, ELECTION)).isEqualTo("new_address");
    }

    @Test
    void takes_texts_of_its_own_over_those_of_the_floor() {
        RulePack floor = RulePacks.load("us");
        ReasonText ours = new ReasonText(SurveyHeading.OTHER, "Ours.");
        RulePack state = new RulePack("s", "S", false, "", Map.of(), Map.of(Reason.SPOILED, ours)).over(floor);

        assertThat(state.reasons().get(Reason.SPOILED)).isEqualTo(ours);
        assertThat(state.reasons().get(Reason.WITHDRAWN))
                .isEqualTo(floor.reasons().get(Reason.WITHDRAWN));
    }

    @Test
    void is_unknown_where_nobody_wrote_anything() {
        ResolvedRule given =
                PackResolver.resolve(RulePacks.load("us"), ELECTION, List.of()).of(Rules.MOVES);

        assertThat(given.isKnown()).isFalse();
        assertThat(given.isFirm()).isFalse();
        assertThat(given.basis()).isEqualTo(Basis.UNKNOWN);
        assertThat(given.word()).isEmpty();
        assertThat(given.isYes()).isFalse();
    }

    @Test
    void names_who_signed_a_ruling_and_what_it_is_on() {
        ResolvedPack ruled =
                ChangedPack.of("us").resolved(ruling("office.closes", ""), ruling("moves.within_county", "either"));

        ResolvedRule confirmed = ruled.of(Rules.OFFICE_CLOSES);
        assertThat(confirmed.basis()).isEqualTo(Basis.RULED);
        assertThat(confirmed.value())
                .isEqualTo(
                        ChangedPack.of("us").resolved().of(Rules.OFFICE_CLOSES).value());
        assertThat(confirmed.signedBy()).isEqualTo("A. Reyes");
        assertThat(confirmed.reference().words())
                .isEqualTo("County ruling of 2026-10-01 signed by A. Reyes on Common practice (2026) (2026)");
        ResolvedRule given = ruled.of(Rules.MOVES);
        assertThat(given.word()).isEqualTo("either");
        assertThat(given.reference().words()).isEqualTo("County ruling of 2026-10-01 signed by A. Reyes (2026)");
    }

    @Test
    void cannot_confirm_what_the_pack_does_not_give() {
        ResolvedRule given =
                ChangedPack.of("us").resolved(ruling("moves.within_county", "")).of(Rules.MOVES);
        assertThat(given.isFirm()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "IN_FORCE, 2016-11-08, apart, READ",
        "FINAL, 2016-11-08, apart, READ",
        "PENDING, 2016-11-08, unknown, UNKNOWN",
        "SET_ASIDE, 2016-11-08, wait, READ",
        "IN_FORCE, 2016-11-07, wait, READ",
        "IN_FORCE, 2016-12-31, apart, READ",
        "IN_FORCE, 2017-01-01, wait, READ"
    })
    void a_court_order_gives_the_value_for_the_elections_it_names(
            CourtOrder.Status standing, LocalDate electionDate, String value, Basis basis) {
        PackCourtOrder order = new PackCourtOrder(
                "U.S. District Court",
                LocalDate.of(2016, 10, 12),
                LocalDate.of(2016, 12, 31),
                standing,
                Rules.EXTENDED_PENDING,
                dated("2016-11-08", "apart"));
        RulePack law = pack(Map.of(Rules.EXTENDED_PENDING, List.of(dated("2004-01-01", "wait"))));
        RulePack pack = new RulePack("s", "S", false, "", Map.of(), Map.of(), List.of(order)).over(law);

        ResolvedRule given = PackResolver.resolve(pack, electionDate, List.of()).of(Rules.EXTENDED_PENDING);

        assertThat(given.value().spelled()).isEqualTo(value);
        assertThat(given.basis()).isEqualTo(basis);
        assertThat(given.reference().words().contains("Order of U.S. District Court of 2016-10-12"))
                .isEqualTo(!value.equals("wait"));
    }

    private static String value(RulePack pack, Rule rule, LocalDate electionDate) {
        return pack.inForce(rule, electionDate).orElseThrow().value().spelled();
    }

    private static CountyRuling ruling(String rule, String value) {
        return new CountyRuling(rule, value, "A. Reyes", LocalDate.of(2026, 10, 1), "counsel's letter");
    }

    private static DatedValue dated(String from, String word) {
        LocalDate day = LocalDate.parse(from);
        return new DatedValue(day, new RuleValue.Word(word), new Reference("Code", "1", 2020), Basis.READ, day);
    }

    private static RulePack pack(Map<Rule, List<DatedValue>> values) {
        return new RulePack("s", "S", false, "", new LinkedHashMap<>(values), Map.of());
    }
}
