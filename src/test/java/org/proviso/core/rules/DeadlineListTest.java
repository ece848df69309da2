package org.proviso.core.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.calendar.DeadlineAnchor;
import org.proviso.files.packs.RulePacks;

class DeadlineListTest {

    private static DeadlineBook book(String pack, String electionDay) {
        return DeadlineBook.of(
                PackResolver.resolve(RulePacks.load(pack), LocalDate.parse(electionDay), List.of()), Set.of());
    }

    private static DeadlineList.Line line(DeadlineBook book, Rule rule) {
        return DeadlineList.of(book).stream()
                .filter(line -> line.rule().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void has_the_earliest_first_and_each_once() {
        List<DeadlineList.Line> lines = DeadlineList.inOrder(book("us-fl", "2026-11-03"));

        assertThat(lines)
                .extracting(line -> line.deadline().orElseThrow().lastMoment())
                .isSortedAccordingTo(Comparator.naturalOrder());
        assertThat(lines).extracting(DeadlineList.Line::rule).doesNotHaveDuplicates();
        assertThat(lines.get(0).what()).isEqualTo("registration");
        assertThat(lines.get(lines.size() - 1).what()).isEqualTo("certification");
    }

    /** Florida decides by noon of the fourth day after a general election, of the third after a primary. */
    @ParameterizedTest
    @CsvSource({"2026-11-03, 2026-11-07T12:00", "2026-08-18, 2026-08-21T12:00"})
    void takes_the_value_for_this_kind_of_election(String electionDay, LocalDateTime noon) {
        assertThat(line(book("us-fl", electionDay), Rules.DECISION)
                        .deadline()
                        .orElseThrow()
                        .lastMoment())
                .isEqualTo(noon);
    }

    @Test
    void says_the_hour_that_a_deadline_takes_over_from_another() {
        DeadlineBook california = book("us-ca", "2024-11-05");

        assertThat(line(california, Rules.DECISION).hour()).isEqualTo("end of day");
        assertThat(line(california, Rules.MAIL_RECEIPT).hour()).isEqualTo("close of business");
        assertThat(line(book("us-md", "2024-11-05"), Rule.cure(Ask.IDENTIFICATION))
                        .hour())
                .isEqualTo("10:00");
    }

    @Test
    void waits_for_the_meeting_that_a_deadline_counts_from() {
        DeadlineBook kansas = book("us-ks", "2024-11-05");
        Rule cure = Rule.cure(Ask.IDENTIFICATION);

        assertThat(line(kansas, cure).waitsForAnAct()).isTrue();
        assertThat(line(kansas, cure).hour()).isEmpty();
        DeadlineList.Line set =
                line(kansas.with(DeadlineAnchor.BOARD_MEETING, LocalDateTime.of(2024, 11, 18, 9, 30)), cure);
        assertThat(set.waitsForAnAct()).isFalse();
        assertThat(set.deadline().orElseThrow().day()).isEqualTo("2024-11-18");
        assertThat(set.hour()).isEqualTo("09:30");
    }

    @Test
    void says_of_every_election_when_registration_ends_even_where_nobody_knows() {
        List<DeadlineList.Line> floor = DeadlineList.of(book("us", "2026-11-03"));

        assertThat(floor).extracting(DeadlineList.Line::what).contains("registration", "decision", "certification");
        assertThat(floor).noneMatch(DeadlineList.Line::waitsForAnAct);
    }

    /** The order of a court stands for the election it names: storm of 2024 (see the pack's own reference). */
    @ParameterizedTest
    @CsvSource({"2022-11-08, 2022-10-09", "2024-11-05, 2024-10-14", "2026-11-03, 2026-10-04"})
    void gives_way_to_a_courts_order_in_its_election_only(String electionDay, LocalDate lastDay) {
        assertThat(line(book("us-sc", electionDay), Rules.REGISTER_ONLINE)
                        .deadline()
                        .orElseThrow()
                        .day())
                .isEqualTo(lastDay);
    }
}
