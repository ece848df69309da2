package org.proviso.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.proviso.sample.county.FileRow;

class SampleTruthTest {

    private static final Pattern RIGHT = Pattern.compile("right style (T\\d\\d(-\\w)?)");

    @Test
    void every_envelope_has_one_truth_and_every_truth_an_envelope() {
        for (SampleElection election : Made.both()) {
            assertThat(election.truth().stream().map(row -> row.get("envelope_no")))
                    .isNotEmpty()
                    .doesNotHaveDuplicates()
                    .containsExactlyInAnyOrderElementsOf(Made.table(election, "envelopes.csv").stream()
                            .map(row -> row.get("envelope_no"))
                            .toList());
        }
    }

    @Test
    void the_voter_behind_an_envelope_is_on_the_roll() {
        for (SampleElection election : Made.both()) {
            Map<String, FileRow> roll = Made.roll(election);
            for (FileRow truth : election.truth()) {
                boolean stranger = Set.of("not_on_roll", "other_county").contains(truth.get("scenario"));
                assertThat(truth.blank("voter_id")).isEqualTo(stranger);
                assertThat(stranger || roll.containsKey(truth.get("voter_id"))).isTrue();
            }
        }
    }

    @Test
    void what_counts_in_part_are_the_contests_of_both_styles() {
        for (SampleElection election : Made.both()) {
            for (FileRow truth : election.truth()) {
                boolean part = truth.get("outcome").equals("count in part");
                assertThat(truth.blank("contests")).isEqualTo(!part);
                if (part) {
                    assertThat(Set.of(truth.get("contests").split(";"))).isEqualTo(shared(election, truth));
                }
            }
        }
    }

    private static Set<String> shared(SampleElection election, FileRow truth) {
        String cast = Made.envelopes(election).get(truth.get("envelope_no")).get("ballot_style_cast");
        Set<String> shared = new TreeSet<>(contests(election, cast));
        shared.retainAll(contests(election, right(truth)));
        if (truth.get("scenario").equals("federal_only")) {
            shared.retainAll(federal(election));
        } else {
            assertThat(shared).hasSizeLessThan(contests(election, cast).size());
        }
        return shared;
    }

    private static Set<String> contests(SampleElection election, String style) {
        return Made.table(election, "ballot-styles.csv").stream()
                .filter(row -> row.get("ballot_style").equals(style))
                .map(row -> row.get("contest_id"))
                .collect(Collectors.toSet());
    }

    private static Set<String> federal(SampleElection election) {
        return Made.table(election, "contests.csv").stream()
                .filter(row -> row.get("level").equals("federal"))
                .map(row -> row.get("contest_id"))
                .collect(Collectors.toSet());
    }

    private static String right(FileRow truth) {
        Matcher matcher = RIGHT.matcher(truth.get("note"));
        assertThat(matcher.find()).as(truth.values().toString()).isTrue();
        return matcher.group(1);
    }

    @Test
    void the_right_style_of_a_voter_who_did_not_move_is_that_of_the_roll() {
        for (SampleElection election : Made.both()) {
            for (FileRow truth : election.truth()) {
                FileRow envelope = Made.envelopes(election).get(truth.get("envelope_no"));
                if (truth.get("note").contains("right style") && envelope.blank("moved_on")) {
                    assertThat(right(truth)).isEqualTo(registeredStyle(election, truth.get("voter_id")));
                }
            }
        }
    }

    private static String registeredStyle(SampleElection election, String voterId) {
        FileRow voter = Made.roll(election).get(voterId);
        List<String> styles = Made.table(election, "precincts.csv").stream()
                .filter(row -> List.of(row.get("precinct"), row.get("split"), row.get("party"))
                        .equals(List.of(voter.get("precinct"), voter.get("split"), voter.get("party"))))
                .map(row -> row.get("ballot_style"))
                .toList();
        assertThat(styles).hasSize(1);
        return styles.get(0);
    }

    @Test
    void a_move_after_the_deadline_keeps_the_registered_ballot_right() {
        List<FileRow> late = Made.scenario(Made.GENERAL, "moved_late_new_style");
        assertThat(late).hasSize(3);
        for (FileRow truth : late) {
            assertThat(right(truth)).isEqualTo(registeredStyle(Made.GENERAL, truth.get("voter_id")));
            assertThat(movedOn(truth)).isAfter(LocalDate.of(2026, 10, 19));
        }
        List<FileRow> early = Made.scenario(Made.GENERAL, "moved_early_old_style");
        assertThat(early).hasSize(3);
        for (FileRow truth : early) {
            assertThat(right(truth)).isNotEqualTo(registeredStyle(Made.GENERAL, truth.get("voter_id")));
            assertThat(movedOn(truth)).isBeforeOrEqualTo(LocalDate.of(2026, 10, 19));
        }
    }

    private static LocalDate movedOn(FileRow truth) {
        FileRow envelope = Made.envelopes(Made.GENERAL).get(truth.get("envelope_no"));
        return LocalDate.parse(envelope.get("moved_on"));
    }

    @Test
    void a_late_registration_is_late_for_its_channel_and_the_last_day_is_in_time() {
        for (FileRow truth : Made.scenario(Made.GENERAL, "registered_late")) {
            assertThat(registered(truth)).isAfter(deadline(truth));
            assertThat(truth.get("outcome")).isEqualTo("reject");
        }
        for (FileRow truth : Made.scenario(Made.GENERAL, "registered_on_last_day")) {
            assertThat(registered(truth)).isEqualTo(deadline(truth));
            assertThat(truth.get("outcome")).isEqualTo("count");
        }
        assertThat(Made.scenario(Made.GENERAL, "registered_on_last_day")).hasSize(2);
    }

    private static LocalDate registered(FileRow truth) {
        return LocalDate.parse(voter(truth).get("registration_date"));
    }

    private static LocalDate deadline(FileRow truth) {
        boolean mail = voter(truth).get("registration_channel").equals("mail");
        return mail ? LocalDate.of(2026, 10, 5) : LocalDate.of(2026, 10, 19);
    }

    private static FileRow voter(FileRow truth) {
        return Made.roll(Made.GENERAL).get(truth.get("voter_id"));
    }

    @Test
    void about_six_in_ten_envelopes_are_hard_to_read() {
        List<FileRow> settled = Made.GENERAL.truth().stream()
                .filter(row -> !row.blank("voter_id") && !row.get("scenario").startsWith("moved"))
                .toList();
        long plain = settled.stream().filter(SampleTruthTest::asOnTheRoll).count();
        assertThat(1 - (double) plain / settled.size()).isBetween(0.54, 0.66);
    }

    /** What the envelope gives of name, birth date, address and last four digits is the roll's, letter by letter. */
    private static boolean asOnTheRoll(FileRow truth) {
        FileRow envelope = Made.envelopes(Made.GENERAL).get(truth.get("envelope_no"));
        FileRow voter = voter(truth);
        String line = voter.get("house_number") + " " + voter.get("street");
        return line.equals(envelope.get("residence_address_line"))
                && (voter.blank("id_last4") || voter.get("id_last4").equals(envelope.get("id_last4")))
                && Stream.of("last_name", "first_name", "middle_name", "date_of_birth", "unit", "city", "zip")
                        .allMatch(column -> envelope.get(column).equals(voter.get(column)));
    }
}
