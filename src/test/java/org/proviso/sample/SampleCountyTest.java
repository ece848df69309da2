package org.proviso.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.proviso.core.Code;
import org.proviso.core.RegistrationChannel;
import org.proviso.core.RollStatus;
import org.proviso.sample.county.ElectionPlan;
import org.proviso.sample.county.FileRow;

class SampleCountyTest {

    @Test
    void the_general_election_has_the_published_size() {
        assertThat(Made.table(Made.GENERAL, "roll.csv")).hasSize(20_000);
        assertThat(Made.table(Made.GENERAL, "mail-ballots.csv")).hasSize(3_000);
        assertThat(Made.table(Made.GENERAL, "check-ins.csv")).hasSize(9_000);
        assertThat(Made.table(Made.GENERAL, "envelopes.csv")).hasSize(240);
        assertThat(distinct("precincts.csv", "precinct")).hasSize(40);
        assertThat(distinct("precincts.csv", "split")).containsExactlyInAnyOrder("", "A", "B");
        assertThat(distinct("ballot-styles.csv", "ballot_style")).hasSize(12);
        assertThat(distinct("precincts.csv", "voting_location")).hasSizeBetween(12, 16);
    }

    @Test
    void the_primary_has_the_published_size_and_a_style_for_each_party_and_for_none() {
        assertThat(Made.table(Made.PRIMARY, "roll.csv")).hasSize(5_000);
        assertThat(Made.table(Made.PRIMARY, "envelopes.csv")).hasSize(60);
        Map<String, Set<String>> parties = new TreeMap<>();
        Made.table(Made.PRIMARY, "precincts.csv")
                .forEach(row -> parties.computeIfAbsent(row.get("precinct") + row.get("split"), key -> new HashSet<>())
                        .add(row.get("party")));
        assertThat(parties.values()).allMatch(Set.of("Harbor", "Granite", "")::equals);
    }

    @Test
    void every_voter_lives_in_the_street_list_in_the_right_precinct_part() {
        for (SampleElection election : Made.both()) {
            Map<String, List<FileRow>> streets = Made.table(election, "streets.csv").stream()
                    .collect(Collectors.groupingBy(SampleCountyTest::street));
            for (FileRow voter : Made.table(election, "roll.csv")) {
                List<FileRow> segments = streets.get(street(voter)).stream()
                        .filter(row -> holds(row, Integer.parseInt(voter.get("house_number"))))
                        .toList();
                assertThat(segments).as(voter.values().toString()).hasSize(1);
                assertThat(segments.get(0).get("precinct") + segments.get(0).get("split"))
                        .isEqualTo(voter.get("precinct") + voter.get("split"));
            }
        }
    }

    @Test
    void some_streets_are_the_border_of_two_precincts_and_some_split_a_precinct() {
        List<FileRow> streets = Made.table(Made.GENERAL, "streets.csv");
        assertThat(streets.stream().filter(row -> row.get("parity").equals("odd")))
                .hasSizeGreaterThan(20);
        Map<String, Set<String>> splits = streets.stream()
                .collect(Collectors.groupingBy(
                        row -> street(row) + row.get("precinct"),
                        Collectors.mapping(row -> row.get("split"), Collectors.toSet())));
        assertThat(splits.values()).contains(Set.of("A", "B"));
    }

    @Test
    void the_neighbor_county_shares_no_town_with_the_street_list() {
        Set<String> towns = distinct("streets.csv", "city");
        Set<String> zips = distinct("streets.csv", "zip");
        List<FileRow> neighbors = Made.scenario(Made.GENERAL, "other_county");
        assertThat(neighbors).hasSize(4);
        for (FileRow truth : neighbors) {
            FileRow envelope = Made.envelopes(Made.GENERAL).get(truth.get("envelope_no"));
            assertThat(towns).doesNotContain(envelope.get("city"));
            assertThat(zips).doesNotContain(envelope.get("zip"));
        }
    }

    @Test
    void every_voter_has_a_number_of_their_own_an_age_to_vote_and_the_roll_s_own_words() {
        for (SampleElection election : Made.both()) {
            List<FileRow> roll = Made.table(election, "roll.csv");
            assertThat(Made.roll(election)).hasSameSizeAs(roll);
            LocalDate day = election == Made.GENERAL ? ElectionPlan.GENERAL.date() : ElectionPlan.PRIMARY.date();
            for (FileRow voter : roll) {
                assertThat(LocalDate.parse(voter.get("date_of_birth"))).isBeforeOrEqualTo(day.minusYears(18));
                assertThat(Code.find(RollStatus.class, voter.get("status"))).isPresent();
                assertThat(Code.find(RegistrationChannel.class, voter.get("registration_channel")))
                        .isPresent();
            }
        }
    }

    @Test
    void every_style_a_precinct_names_holds_contests_and_every_contest_is_on_a_style() {
        for (SampleElection election : Made.both()) {
            List<FileRow> styles = Made.table(election, "ballot-styles.csv");
            assertThat(values(styles, "ballot_style"))
                    .containsAll(values(Made.table(election, "precincts.csv"), "ballot_style"));
            assertThat(values(styles, "contest_id"))
                    .isEqualTo(values(Made.table(election, "contests.csv"), "contest_id"));
        }
    }

    private static boolean holds(FileRow segment, int number) {
        boolean side =
                segment.get("parity").equals("both") || segment.get("parity").equals(number % 2 == 0 ? "even" : "odd");
        return side
                && Integer.parseInt(segment.get("low")) <= number
                && number <= Integer.parseInt(segment.get("high"));
    }

    private static String street(FileRow row) {
        return row.get("street") + "|" + row.get("city") + "|" + row.get("zip");
    }

    private static Set<String> distinct(String file, String column) {
        return values(Made.table(Made.GENERAL, file), column);
    }

    private static Set<String> values(List<FileRow> rows, String column) {
        return rows.stream().map(row -> row.get(column)).collect(Collectors.toSet());
    }
}
