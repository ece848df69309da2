package org.proviso.core.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Typed rules against deadlines that states and counties published; each row of the tables names its source. A rule
 * takes its closed-day part from the source's words, never from the date it has to meet.
 */
class PublishedDeadlineTest {

    private static final LocalTime CLOSES = LocalTime.of(17, 0);

    @ParameterizedTest(name = "{0} {1} {2}: {3} {4}")
    @CsvFileSource(resources = "/published/registration-deadlines.csv", numLinesToSkip = 1)
    void computes_the_last_day_to_register(
            String state,
            LocalDate electionDay,
            String method,
            int count,
            String unit,
            String ifClosed,
            String holidays,
            LocalDate lastDay,
            String source) {
        OfficeCalendar calendar = new OfficeCalendar(Steps.holidays(holidays), Set.of());
        // Election day and a Saturday by design are open days for the registrar, whatever the office calendar says.
        Set<ClosedDayRule> all = count == 0 ? Set.of(ClosedDayRule.SAME_DAY) : Steps.ifClosed(ifClosed);

        assertThat(all)
                .as(source)
                .allSatisfy(closed -> assertThat(rule(count, unit, TimeOfDay.END_OF_DAY, closed)
                                .on(electionDay, calendar, CLOSES)
                                .day())
                        .isEqualTo(lastDay));
    }

    @ParameterizedTest(name = "{0} {1} {2}: {3} {4}")
    @CsvFileSource(resources = "/published/cure-deadlines.csv", numLinesToSkip = 1)
    void computes_the_deadlines_after_an_election(
            String state,
            LocalDate electionDay,
            String what,
            int count,
            String unit,
            String time,
            String ifClosed,
            LocalDate lastDay,
            String source) {
        TimeOfDay hour = TimeOfDay.parse(time).orElseThrow();
        OfficeCalendar calendar = new OfficeCalendar(Steps.holidays("federal"), Set.of());

        assertThat(Steps.ifClosed(ifClosed))
                .as(source)
                .allSatisfy(closed -> assertThat(rule(count, unit, hour, closed)
                                .on(electionDay, calendar, CLOSES)
                                .lastMoment())
                        .isEqualTo(lastDay.atTime(hour.lastMoment(CLOSES))));
    }

    /**
     * Rules that were read, with dates computed from them by hand (no date was published): Wisconsin names the weekday,
     * so the holiday of 11 November does not move it (elections.wi.gov/node/1025); Nevada's rolls to the next working
     * day (NAC 293.270(3)); so does Georgia's third day (O.C.G.A. 21-2-419(c)(1); the roll is from memory).
     */
    @ParameterizedTest
    @CsvSource({
        "2016-11-08, 1, friday, 16:00, same_day, 2016-11-11T16:00",
        "2022-11-08, 1, friday, 16:00, same_day, 2022-11-11T16:00",
        "2016-11-08, 1, friday, 17:00, next_open_day, 2016-11-14T17:00",
        "2022-11-08, 1, friday, 17:00, next_open_day, 2022-11-14T17:00",
        "2022-11-08, 3, days, 17:00, next_open_day, 2022-11-14T17:00"
    })
    void moves_a_deadline_on_a_holiday_only_where_the_rule_says_so(
            LocalDate electionDay, int count, String unit, String time, String ifClosed, String lastMoment) {
        OfficeCalendar calendar = new OfficeCalendar(Steps.holidays("federal"), Set.of());
        ClosedDayRule closed = Steps.ifClosed(ifClosed).iterator().next();
        Deadline deadline =
                rule(count, unit, TimeOfDay.parse(time).orElseThrow(), closed).on(electionDay, calendar, CLOSES);

        assertThat(deadline.lastMoment()).isEqualTo(lastMoment);
        assertThat(deadline.wasMoved()).isEqualTo(closed == ClosedDayRule.NEXT_OPEN_DAY);
    }

    @Test
    void moves_backward_where_the_rule_says_so() {
        OfficeCalendar calendar = new OfficeCalendar(Steps.holidays("federal"), Set.of(LocalDate.of(2026, 10, 9)));

        // 11 October 2026 is a Sunday; the Friday before it is closed for this election.
        assertThat(rule(-23, "days", TimeOfDay.CLOSE_OF_BUSINESS, ClosedDayRule.PREVIOUS_OPEN_DAY)
                        .on(LocalDate.of(2026, 11, 3), calendar, LocalTime.of(16, 30))
                        .lastMoment())
                .isEqualTo("2026-10-08T16:30");
    }

    private static DeadlineRule rule(int count, String unit, TimeOfDay time, ClosedDayRule closed) {
        return new DeadlineRule(DeadlineAnchor.ELECTION_DAY, Steps.of(count, unit), time, closed);
    }
}
