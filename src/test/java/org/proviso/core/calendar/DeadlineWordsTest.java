package org.proviso.core.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DeadlineWordsTest {

    private static final OfficeCalendar CALENDAR = new OfficeCalendar(EnumSet.noneOf(Holiday.class), Set.of());

    @ParameterizedTest
    @CsvSource({
        "0, days, on election day",
        "1, days, 1 day after election day",
        "-15, days, 15 days before election day",
        "2, business_days, 2 business days after election day",
        "1, friday, Friday after election day",
        "-2, friday, 2nd Friday before election day",
        "-3, wednesday, 3rd Wednesday before election day",
        "-5, monday, 5th Monday before election day"
    })
    void reads_as_a_sentence(int count, String unit, String words) {
        assertThat(rule(count, unit, "17:00", ClosedDayRule.SAME_DAY).words()).isEqualTo(words + ", 5:00 pm");
    }

    @Test
    void says_what_a_closed_day_does() {
        assertThat(rule(7, "days", "close_of_business", ClosedDayRule.NEXT_OPEN_DAY)
                        .words())
                .isEqualTo("7 days after election day, close of business; if closed, the next open day");
        assertThat(rule(7, "days", "end_of_day", ClosedDayRule.PREVIOUS_OPEN_DAY)
                        .words())
                .isEqualTo("7 days after election day, end of day; if closed, the previous open day");
    }

    /** 3 November 2026 is a Tuesday. */
    @ParameterizedTest
    @CsvSource({
        "1, tuesday, 2026-11-10",
        "1, wednesday, 2026-11-04",
        "2, monday, 2026-11-16",
        "-1, tuesday, 2026-10-27",
        "-1, monday, 2026-11-02",
        "-2, wednesday, 2026-10-21"
    })
    void never_counts_the_day_of_the_anchor_as_the_first_such_weekday(int nth, String weekday, LocalDate day) {
        assertThat(Steps.of(nth, weekday).from(LocalDate.of(2026, 11, 3), CALENDAR))
                .isEqualTo(day);
    }

    @ParameterizedTest
    @CsvSource({"3, 2026-11-06", "4, 2026-11-09", "0, 2026-11-03", "-1, 2026-11-02", "-2, 2026-10-30"})
    void counts_open_days_in_both_directions(int days, LocalDate day) {
        assertThat(Steps.of(days, "business_days").from(LocalDate.of(2026, 11, 3), CALENDAR))
                .isEqualTo(day);
    }

    @Test
    void is_in_time_until_its_last_moment_and_not_one_second_longer() {
        Deadline deadline = rule(2, "days", "17:00", ClosedDayRule.SAME_DAY)
                .on(LocalDate.of(2026, 11, 3), CALENDAR, LocalTime.of(16, 0));

        assertThat(deadline.hasPassed(LocalDate.of(2026, 11, 5).atTime(17, 0))).isFalse();
        assertThat(deadline.hasPassed(LocalDate.of(2026, 11, 5).atTime(17, 0, 1)))
                .isTrue();
    }

    @Test
    void spells_times_as_files_do() {
        assertThat(TimeOfDay.parse("17:00").orElseThrow().spelled()).isEqualTo("17:00");
        assertThat(TimeOfDay.CLOSE_OF_BUSINESS.spelled()).isEqualTo("close of business");
        assertThat(TimeOfDay.END_OF_DAY.words()).isEqualTo("end of day");
        assertThat(TimeOfDay.END_OF_DAY.lastMoment(LocalTime.NOON)).isEqualTo(LocalTime.of(23, 59, 59));
    }

    @ParameterizedTest
    @ValueSource(strings = {"5 pm", "24:00", "17", "", "noon"})
    void takes_no_other_words_for_a_time(String text) {
        assertThat(TimeOfDay.parse(text)).isEmpty();
    }

    @Test
    void names_its_anchor_in_words() {
        assertThat(DeadlineAnchor.MAIL_RECEIPT.words()).isEqualTo("mail receipt");
    }

    private static DeadlineRule rule(int count, String unit, String time, ClosedDayRule closed) {
        return new DeadlineRule(
                DeadlineAnchor.ELECTION_DAY,
                Steps.of(count, unit),
                TimeOfDay.parse(time).orElseThrow(),
                closed);
    }
}
