package org.proviso.core.calendar;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.TemporalAdjusters;
import java.util.EnumSet;
import java.util.Set;
import org.proviso.core.Code;

/**
 * Public holidays a county office may keep: the eleven of 5 USC 6103(a), and days that states add (from memory). Which
 * of them a county keeps, and what a deadline on one does, is state law and stands in the rule pack.
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
                    .plusDays(1)),
    LINCOLNS_BIRTHDAY(1892, year -> LocalDate.of(year, 2, 12)),
    MARDI_GRAS(1875, year -> easter(year).minusDays(47)),
    GOOD_FRIDAY(1870, year -> easter(year).minusDays(2)),
    CESAR_CHAVEZ_DAY(2000, year -> LocalDate.of(year, 3, 31)),
    EMANCIPATION_DAY(2005, year -> LocalDate.of(year, 4, 16)),
    PATRIOTS_DAY(1969, year -> nth(year, Month.APRIL, DayOfWeek.MONDAY, 3)),
    TRUMAN_DAY(1967, year -> LocalDate.of(year, 5, 8)),
    KUHIO_DAY(1949, year -> LocalDate.of(year, 3, 26)),
    KAMEHAMEHA_DAY(1871, year -> LocalDate.of(year, 6, 11)),
    WEST_VIRGINIA_DAY(1927, year -> LocalDate.of(year, 6, 20)),
    PIONEER_DAY(1870, year -> LocalDate.of(year, 7, 24)),
    VICTORY_DAY(1948, year -> nth(year, Month.AUGUST, DayOfWeek.MONDAY, 2)),
    BENNINGTON_BATTLE_DAY(1870, year -> LocalDate.of(year, 8, 16)),
    STATEHOOD_DAY_HAWAII(1969, year -> nth(year, Month.AUGUST, DayOfWeek.FRIDAY, 3)),
    ALASKA_DAY(1917, year -> LocalDate.of(year, 10, 18)),
    NEVADA_DAY(2000, year -> nth(year, Month.OCTOBER, DayOfWeek.FRIDAY, -1)),
    CHRISTMAS_EVE(1870, year -> LocalDate.of(year, 12, 24));

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

    /** The eleven of 5 USC 6103(a). */
    public static Set<Holiday> federal() {
        return EnumSet.range(NEW_YEARS_DAY, CHRISTMAS);
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

    /** Easter Sunday of the Gregorian calendar (the anonymous computus of 1876, common practice). */
    private static LocalDate easter(int year) {
        int golden = year % 19;
        int century = year / 100;
        int ofCentury = year % 100;
        int correction = (century - (century + 8) / 25 + 1) / 3;
        int moon = Math.floorMod(19 * golden + century - century / 4 - correction + 15, 30);
        int weekday = Math.floorMod(32 + 2 * (century % 4) + 2 * (ofCentury / 4) - moon - ofCentury % 4, 7);
        int late = (golden + 11 * moon + 22 * weekday) / 451;
        int day = moon + weekday - 7 * late + 114;
        return LocalDate.of(year, day / 31, day % 31 + 1);
    }

    private interface YearRule {
        LocalDate in(int year);
    }
}
