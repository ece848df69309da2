package org.proviso.core.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The forms of deadline beyond a plain count from a day. */
class DeadlineFormsTest {

    private static final OfficeCalendar FEDERAL = new OfficeCalendar(Holiday.federal(), Set.of());
    private static final LocalTime CLOSES = LocalTime.of(17, 0);

    /** Registration books close on the fourth Tuesday before the election: the day before it is the last one. */
    @ParameterizedTest
    @CsvSource({"2020-11-03, 2020-10-05", "2022-11-08, 2022-10-10", "2023-11-07, 2023-10-09", "2024-05-21, 2024-04-22"})
    void counts_from_a_day_that_is_itself_counted(LocalDate electionDay, LocalDate lastDay) {
        DeadlineOffset step =
                new DeadlineOffset.Then(new DeadlineOffset.Weekday(-4, DayOfWeek.TUESDAY), new DeadlineOffset.Days(-1));

        assertThat(step.from(electionDay, FEDERAL)).isEqualTo(lastDay);
        assertThat(new DeadlineRule(
                                DeadlineAnchor.ELECTION_DAY, step, TimeOfDay.END_OF_DAY, ClosedDayRule.NEXT_OPEN_DAY)
                        .words())
                .isEqualTo(
                        "1 day before the 4th Tuesday before election day, end of day; if closed, the next open day");
    }

    @Test
    void stands_on_the_day_that_a_court_named() {
        DeadlineOffset fixed = new DeadlineOffset.Fixed(LocalDate.of(2024, 10, 14));

        assertThat(rule(DeadlineAnchor.ELECTION_DAY, fixed, "end_of_day", ClosedDayRule.SAME_DAY)
                        .on(LocalDate.of(2024, 11, 5), FEDERAL, CLOSES)
                        .day())
                .isEqualTo("2024-10-14");
        assertThat(fixed.words()).contains("October 14, 2024");
    }

    /** Monday 10 October 2022 is a federal holiday, 9 October a Sunday; 8 October a Saturday with mail. */
    @ParameterizedTest
    @CsvSource({
        "next_postal_day, -30, 2022-10-11",
        "next_postal_day, -31, 2022-10-08",
        "monday_if_weekend, -30, 2022-10-10",
        "monday_if_weekend, -31, 2022-10-10",
        "monday_if_weekend, -29, 2022-10-10",
        "next_open_day_if_holiday, -31, 2022-10-08",
        "next_open_day_if_holiday, -30, 2022-10-09",
        "next_open_day_if_holiday, -29, 2022-10-11",
        "next_open_day, -31, 2022-10-11",
        "previous_open_day, -29, 2022-10-07"
    })
    void moves_by_the_rule_of_its_channel(String ifClosed, int days, LocalDate day) {
        ClosedDayRule closed = Steps.ifClosed(ifClosed).iterator().next();
        assertThat(rule(DeadlineAnchor.ELECTION_DAY, new DeadlineOffset.Days(days), "end_of_day", closed)
                        .on(LocalDate.of(2022, 11, 8), FEDERAL, CLOSES)
                        .day())
                .isEqualTo(day);
    }

    @Test
    void mail_is_not_stopped_by_holidays_that_only_the_state_keeps() {
        OfficeCalendar nevada = new OfficeCalendar(EnumSet.of(Holiday.NEVADA_DAY), Set.of());
        // 30 October 2026 is Nevada Day, four days before the election.
        DeadlineRule post = rule(
                DeadlineAnchor.ELECTION_DAY, new DeadlineOffset.Days(-4), "end_of_day", ClosedDayRule.NEXT_POSTAL_DAY);
        DeadlineRule office = rule(
                DeadlineAnchor.ELECTION_DAY, new DeadlineOffset.Days(-4), "end_of_day", ClosedDayRule.NEXT_OPEN_DAY);

        assertThat(post.on(LocalDate.of(2026, 11, 3), nevada, CLOSES).day()).isEqualTo("2026-10-30");
        assertThat(office.on(LocalDate.of(2026, 11, 3), nevada, CLOSES).day()).isEqualTo("2026-11-02");
    }

    @Test
    void ends_at_the_hour_of_the_act_where_it_counts_in_hours() {
        DeadlineRule within24Hours =
                rule(DeadlineAnchor.FINDING_MADE, new DeadlineOffset.Days(1), "that_hour", ClosedDayRule.SAME_DAY);
        LocalDateTime found = LocalDateTime.of(2026, 11, 4, 14, 20);

        assertThat(within24Hours.from(found, FEDERAL, CLOSES).lastMoment()).isEqualTo("2026-11-05T14:20");
        assertThat(within24Hours.words()).isEqualTo("1 day after finding made, at that hour");
    }

    /** Wednesday 4 November 2026; the seventh is a Saturday. */
    @ParameterizedTest
    @CsvSource({"2026-11-04T17:00, 2026-11-07", "2026-11-04T17:01, 2026-11-08", "2026-11-06T18:00, 2026-11-12"})
    void counts_an_act_after_hours_as_done_on_the_next_open_day(LocalDateTime act, LocalDate day) {
        DeadlineRule rule = new DeadlineRule(
                DeadlineAnchor.NOTICE_SENT,
                new DeadlineOffset.Days(3),
                TimeOfDay.END_OF_DAY,
                ClosedDayRule.SAME_DAY,
                LocalTime.of(17, 0));

        assertThat(rule.from(act, FEDERAL, CLOSES).day()).isEqualTo(day);
        assertThat(rule.words())
                .isEqualTo("3 days after notice sent, end of day; an act after 5:00 pm counts as done on the next"
                        + " open day");
    }

    /** Easter Sundays as published for these years (common knowledge): 2016-03-27, 2024-03-31, 2025-04-20. */
    @ParameterizedTest
    @CsvSource({"2016, 2016-03-25, 2016-02-09", "2024, 2024-03-29, 2024-02-13", "2025, 2025-04-18, 2025-03-04"})
    void knows_the_days_that_move_with_easter(int year, LocalDate goodFriday, LocalDate mardiGras) {
        assertThat(Holiday.GOOD_FRIDAY.date(year)).isEqualTo(goodFriday);
        assertThat(Holiday.MARDI_GRAS.date(year)).isEqualTo(mardiGras);
    }

    private static DeadlineRule rule(DeadlineAnchor anchor, DeadlineOffset step, String time, ClosedDayRule closed) {
        return new DeadlineRule(anchor, step, TimeOfDay.parse(time).orElseThrow(), closed);
    }
}
