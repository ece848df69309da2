package org.proviso.core.calendar;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.TemporalAdjusters;
import org.proviso.core.Code;

/**
 * Public holidays a county office may keep: the eleven of 5 USC 6103(a), and days that states add. Which of them a
 * county keeps, and what a deadline on one does, is state law and stands in the rule pack.
 */
public enum Holiday implements Code {
    NEW_YEARS_DAY(1870, year -> LocalDate.of(year, 1, 1)),
    MARTIN_LUTHER_KING_DAY(1986, year -> nth(year, Month.JANUARY, DayOfWeek.MONDAY, 3)),
    WASHINGTONS_BIRTHDAY(1971, year -> nth(year, Month.FEBRUARY, DayOfWeek.MONDAY, 3)),
    MEMORIAL_DAY(1971, year -> nth(year, Month.MAY, DayOfWeek.MONDAY, -1)),
    JUNETEENTH(2021, year -> LocalDate.of(year, 6, 19)),
    INDEPENDENCE_DAY(1870, year -> LocalDate.of(year, 7, 4)),
    LABOR_DAY(1894, year -> nth(year, Month.SEPTEMBER, DayOfWeek.MONDAY, 1)),
    COLUMBUS_DAY(1971, year -> nth(year, Month.OCTOBER, DayOfWeek.MONDAY, 2)),
    VETERANS_DAY(1978, year -> LocalDate.of(year, 11, 11)),
    THANKSGIVING(1942, year -> nth(year, Month.NOVEMBER, DayOfWeek.THURSDAY, 4)),
    CHRISTMAS(1870, year -> LocalDate.of(year, 12, 25)),
    DAY_AFTER_THANKSGIVING(1942, year -> THANKSGIVING.date(year).plusDays(1)),
    GENERAL_ELECTION_DAY(
            1845,
            year -> LocalDate.of(year, 11, 1)
                    .with(TemporalAdjusters.firstInMonth(DayOfWeek.MONDAY))
                    .plusDays(1));

    private final int sinceYear;
    private final YearRule rule;

    Holiday(int sinceYear, YearRule rule) {
        this.sinceYear = sinceYear;
        this.rule = rule;
    }

    /** The day itself in that year. */
    public LocalDate date(int year) {
        return rule.in(year);
    }

    /** Whether the holiday was already kept in that year (years from memory; 5 USC 6103 names the days only). */
    public boolean keptIn(int year) {
        return year >= sinceYear;
    }

    /** The day off: a Saturday moves to the Friday before, a Sunday to the Monday after (38 CFR 20.306). */
    public LocalDate observed(int year) {
        LocalDate day = date(year);
        if (day.getDayOfWeek() == DayOfWeek.SATURDAY) {
            return day.minusDays(1);
        }
        return day.getDayOfWeek() == DayOfWeek.SUNDAY ? day.plusDays(1) : day;
    }

    private static LocalDate nth(int year, Month month, DayOfWeek weekday, int n) {
        return LocalDate.of(year, month, 1).with(TemporalAdjusters.dayOfWeekInMonth(n, weekday));
    }

    private interface YearRule {
        LocalDate in(int year);
    }
}
