package org.proviso.core.adjudication;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proviso.core.Entitlement;
import org.proviso.core.PrecinctId;
import org.proviso.core.PrecinctPart;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.finding.LocatedAddress;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.Rules;
import org.proviso.core.rules.StateRules;

/** The voter is registered in precinct 1 (style A) and, where the test says so, now lives in precinct 2 (style B). */
class FactFinderBallotTest {

    private final SmallCase small = new SmallCase();

    @Test
    void knows_the_right_style_at_the_registered_address() {
        assertThat(small.word(Fact.BALLOT)).isEqualTo("right_style");
        assertThat(small.word(Fact.PLACE)).isEqualTo("own_place");
        assertThat(small.presumed().contests().right()).contains("SENATE-7");
    }

    @Test
    void compares_the_contests_of_another_style_with_the_voters_own() {
        small.envelope.style = "C";
        assertThat(small.word(Fact.BALLOT)).isEqualTo("other_style");
        assertThat(small.evidence(Fact.BALLOT))
                .contains("style C; the voter's own is style A. The voter may vote 3 of the 5 contests on it.");
        assertThat(small.presumed().contests().notTheirs()).containsExactlyInAnyOrder("SENATE-8", "SCHOOL");
    }

    /** The example state's registration deadline in person is October 19, 2026. */
    @ParameterizedTest
    @CsvSource({
        "registered_address, A, right_style",
        "registered_address, B, other_style",
        "new_address, A, other_style",
        "new_address, B, right_style",
        "either, A, right_style",
        "either, B, right_style",
        "either, C, other_style"
    })
    void gives_a_voter_who_moved_the_ballot_of_the_address_that_decides(String rule, String style, String word) {
        moved("2 Oak St");
        small.pack.word(Rules.MOVES, rule);
        small.envelope.style = style;
        assertThat(small.word(Fact.BALLOT)).isEqualTo(word);
    }

    @ParameterizedTest
    @CsvSource({
        "2026-10-19, B, right_style",
        "2026-10-19, A, other_style",
        "2026-10-20, A, right_style",
        "2026-10-20, B, other_style",
        ", A, right_style",
        ", B, right_style"
    })
    void decides_by_the_day_of_the_move_where_the_law_does(LocalDate movedOn, String style, String word) {
        moved("2 Oak St");
        small.envelope.movedOn = movedOn;
        small.envelope.style = style;
        assertThat(small.word(Fact.BALLOT)).isEqualTo(word);
    }

    @Test
    void takes_either_ballot_where_the_deadline_that_decides_is_not_known() {
        moved("2 Oak St");
        small.envelope.movedOn = LocalDate.of(2026, 10, 1);
        small.pack.without(Rules.REGISTER_IN_PERSON);
        assertThat(small.word(Fact.BALLOT)).isEqualTo("right_style");
    }

    @Test
    void takes_either_ballot_where_the_deadline_that_decides_is_only_remembered() {
        moved("2 Oak St");
        small.envelope.movedOn = LocalDate.of(2026, 10, 1);
        small.pack.fromMemory(Rules.REGISTER_IN_PERSON);
        assertThat(small.word(Fact.BALLOT)).isEqualTo("right_style");
        assertThat(small.evidence(Fact.BALLOT)).contains("No source was read for the deadline, so either ballot");
    }

    @ParameterizedTest
    @CsvSource({
        "2026-10-19, 'Moved on 10/19/2026, on or before the registration deadline of 10/19/2026: the new address decides ('",
        "2026-10-20, 'Moved on 10/20/2026, after the registration deadline of 10/19/2026: the registered address decides ('",
        ", 'The date of the move is not stated, so either ballot is accepted ('"
    })
    void says_which_address_the_day_of_the_move_makes_decide(LocalDate movedOn, String words) {
        moved("2 Oak St");
        small.envelope.movedOn = movedOn;
        assertThat(small.evidence(Fact.BALLOT)).contains(words);
    }

    /** A slip of the pen is no move, unless the street file has the address as it is written. */
    @Test
    void takes_a_misspelled_registered_address_for_the_registered_one() {
        moved("1 Elmm St");
        notInStreetFile("1 Elmm St");
        assertThat(small.word(Fact.BALLOT)).isEqualTo("right_style");
        assertThat(small.evidence(Fact.BALLOT)).contains("It is one error away from the registered address");
        small.records.lives("1 Elmm St", SmallRecords.TWO);
        small.pack.word(Rules.MOVES, "new_address");
        assertThat(small.word(Fact.BALLOT)).isEqualTo("other_style");
    }

    @Test
    void cannot_tell_where_nobody_could_source_which_address_decides() {
        moved("2 Oak St");
        small.pack.without(Rules.MOVES);
        assertThat(small.word(Fact.BALLOT)).isEqualTo("unknown");
        assertThat(small.evidence(Fact.BALLOT))
                .contains("No source read and no county ruling says which address decides");
        assertThat(small.presumed().contests()).isNull();
    }

    @Test
    void does_not_ask_about_a_move_within_the_same_precinct_part() {
        small.records.lives("9 Elm St", SmallRecords.ONE);
        moved("9 Elm St");
        small.pack.without(Rules.MOVES);
        assertThat(small.word(Fact.BALLOT)).isEqualTo("right_style");
    }

    @Test
    void tells_two_splits_of_a_precinct_apart() {
        small.voter.houseNumber = "3";
        small.voter.street = "Oak St";
        small.voter.precinct = "2";
        small.voter.split = "X";
        small.envelope.address = "3 Oak St";
        small.envelope.style = "B";
        small.envelope.place = "Town Hall";

        assertThat(small.word(Fact.BALLOT)).isEqualTo("other_style");
        assertThat(small.word(Fact.PLACE)).isEqualTo("own_place");
        assertThat(small.presumed().contests().missing()).containsExactly("SCHOOL");
    }

    @Test
    void trusts_the_roll_where_the_affirmation_gives_no_address() {
        small.envelope.address = "";
        assertThat(small.word(Fact.BALLOT)).isEqualTo("right_style");
        assertThat(small.word(Fact.RESIDENCE)).isEqualTo("unknown");
        assertThat(small.evidence(Fact.BALLOT))
                .contains("the registered address decides: 1 Elm St, Millbrook 49871, precinct 1");
    }

    @Test
    void cannot_tell_the_style_of_an_address_in_several_parts_unless_the_rolls_is_among_them() {
        small.records.lives("5 Border Rd", SmallRecords.TWO, SmallRecords.TWO_X);
        moved("5 Border Rd");
        assertThat(small.word(Fact.BALLOT)).isEqualTo("unknown");
        small.records.lives("5 Border Rd", SmallRecords.TWO, SmallRecords.ONE);
        assertThat(small.word(Fact.BALLOT)).isEqualTo("right_style");
    }

    @Test
    void cannot_tell_the_style_of_an_address_the_street_file_does_not_have() {
        notInStreetFile("7 New Rd");
        moved("7 New Rd");
        assertThat(small.word(Fact.BALLOT)).isEqualTo("unknown");
        assertThat(small.word(Fact.RESIDENCE)).isEqualTo("in_county");
        moved("12 Far Away Rd");
        assertThat(small.word(Fact.RESIDENCE)).isEqualTo("out_of_county");
    }

    @Test
    void cannot_tell_where_the_style_cast_or_the_precinct_is_not_known() {
        small.envelope.style = "Z";
        assertThat(small.word(Fact.BALLOT)).isEqualTo("unknown");
        small.envelope.style = "A";
        small.voter.precinct = "99";
        small.envelope.address = "";
        assertThat(small.word(Fact.BALLOT)).isEqualTo("unknown");
        assertThat(small.word(Fact.PLACE)).isEqualTo("unknown");
    }

    @Test
    void finds_the_style_of_an_address_without_any_voter() {
        small.noVoter();
        small.envelope.address = "2 Oak St";
        assertThat(small.word(Fact.BALLOT)).isEqualTo("other_style");
        assertThat(small.word(Fact.ENTITLEMENT)).isEqualTo("unknown");
    }

    /** A vote center prints any style anywhere: the precinct table names no location, and the style alone tells. */
    @ParameterizedTest
    @ValueSource(strings = {"", "Town Hall"})
    void knows_no_own_place_at_a_vote_center(String place) {
        if (place.isEmpty()) {
            small.envelope.place = "";
        } else {
            small.records.rows.set(0, new PrecinctPart("1", "", "A", "", ""));
            small.envelope.place = place;
        }
        assertThat(small.word(Fact.PLACE)).isEqualTo("unknown");
        assertThat(small.word(Fact.BALLOT)).isEqualTo("right_style");
    }

    /** Where each right style leaves the voter as much, the registered address comes first. */
    @Test
    void takes_the_style_of_the_registered_address_where_the_other_leaves_no_more() {
        moved("2 Oak St");
        small.pack.word(Rules.MOVES, "either");
        small.records.style("D", "", "PRES", "HOUSE", "CITY");
        small.envelope.style = "D";
        assertThat(small.presumed().contests().right()).contains("SENATE-7");
    }

    @Test
    void says_where_the_voter_lives_although_the_style_cast_is_not_known() {
        small.envelope.style = "Z";
        assertThat(small.evidence(Fact.BALLOT))
                .isEqualTo("Lives at the registered address or in the same precinct part: precinct 1.");
    }

    /** Before 5 pm no sworn reason excuses a ballot for another precinct; from then on a person reads what was sworn. */
    @ParameterizedTest
    @CsvSource({
        "2026-11-03T16:59, not_sworn, 'Cast at 4:59 pm, before the time from which a sworn reason excuses it.'",
        "2026-11-03T17:00, unknown, ''",
        ", unknown, ''"
    })
    void excuses_nobody_before_the_hour_that_the_law_names(LocalDateTime at, String word, String evidence) {
        small.pack.with(StateRules.LATE_EXCUSE_AFTER, new RuleValue.Time(LocalTime.of(17, 0)));
        small.envelope.at = at;
        assertThat(small.word(Fact.LATE_EXCUSE)).isEqualTo(word);
        assertThat(small.evidence(Fact.LATE_EXCUSE)).isEqualTo(evidence);
    }

    @Test
    void asks_for_no_late_excuse_where_the_law_names_no_hour() {
        assertThat(small.word(Fact.LATE_EXCUSE)).isEqualTo("unknown");
    }

    @Test
    void knows_another_place_of_the_county() {
        small.envelope.place = "Town Hall";
        assertThat(small.word(Fact.PLACE)).isEqualTo("other_place");
    }

    @Test
    void knows_who_may_vote_for_federal_offices_only() {
        assertThat(small.word(Fact.ENTITLEMENT)).isEqualTo("full");
        assertThat(small.evidence(Fact.ENTITLEMENT)).isEmpty();
        small.voter.entitlement = Entitlement.FEDERAL_ONLY;
        assertThat(small.word(Fact.ENTITLEMENT)).isEqualTo("federal_only");
        assertThat(small.evidence(Fact.ENTITLEMENT)).isEqualTo("Registered for federal contests only.");
    }

    /** Of two right styles the one that shares more contests with the ballot cast is the voter's choice. */
    @Test
    void takes_the_right_style_that_leaves_the_voter_most() {
        moved("3 Oak St");
        small.pack.word(Rules.MOVES, "either");
        small.records.style("D", "", "PRES", "SENATE-8", "SCHOOL", "CITY");
        small.envelope.style = "D";
        assertThat(small.presumed().contests().right()).contains("SENATE-8", "SCHOOL");
    }

    @Test
    void never_writes_a_protected_address_into_the_evidence() {
        moved("2 Oak St");
        small.voter.confidential = true;
        assertThat(small.evidence(Fact.BALLOT)).contains("a protected address").doesNotContain("Elm St");
        small.envelope.address = "";
        assertThat(small.evidence(Fact.BALLOT)).contains("a protected address").doesNotContain("Elm St");
    }

    private void notInStreetFile(String line) {
        small.records.streets.put(
                line,
                new LocatedAddress(LocatedAddress.Place.IN_COUNTY_NOT_FOUND, List.of(), "Not in the street file."));
    }

    private void moved(String address) {
        small.envelope.address = address;
    }

    /** An unordered set would name them otherwise in another run of the program. */
    @Test
    void names_the_styles_of_several_possible_parts_in_the_order_of_the_street_file() {
        small.noVoter();
        List<PrecinctId> parts = new ArrayList<>();
        for (String number : List.of("9", "3", "8", "4", "7", "5")) {
            parts.add(new PrecinctId(number, ""));
            small.records.rows.add(new PrecinctPart(number, "", "S" + number, "", "Library"));
            small.records.style("S" + number, "", "PRES");
        }
        small.records.lives("1 Elm St", parts.toArray(PrecinctId[]::new));
        assertThat(small.evidence(Fact.BALLOT)).contains("style S9 or S3 or S8 or S4 or S7 or S5.");
    }
}
