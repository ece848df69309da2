package org.proviso.core.calendar;

import java.time.DayOfWeek;
import java.time.LocalDate;
import org.proviso.core.Code;

/** What happens to a deadline that falls on a day when the office (or the post, for its channel) is closed. */
public enum ClosedDayRule implements Code {
    SAME_DAY(""),
    NEXT_OPEN_DAY("; if closed, the next open day"),
    PREVIOUS_OPEN_DAY("; if closed, the previous open day"),
    /** A holiday moves it to the next open day; a weekend by itself does not. */
    NEXT_OPEN_DAY_IF_HOLIDAY("; if a holiday, the next open day"),
    /** A Saturday or Sunday moves it to Monday, a holiday does not. */
    MONDAY_IF_WEEKEND("; if a weekend, the Monday after"),
    /** For a postmark: the next day on which there is mail (a Saturday is one, a federal holiday is not). */
    NEXT_POSTAL_DAY("; if there is no mail that day, the next day with mail");

    private final String words;

    ClosedDayRule(String words) {
        this.words = words;
    }

    /** The words at the end of a rule; empty where the day does not move. */
    String words() {
        return words;
    }

    LocalDate move(LocalDate day, OfficeCalendar calendar) {
        return switch (this) {
            case SAME_DAY -> day;
            case NEXT_OPEN_DAY -> calendar.openOnOrAfter(day);
            case PREVIOUS_OPEN_DAY -> calendar.openOnOrBefore(day);
            case NEXT_OPEN_DAY_IF_HOLIDAY -> calendar.isHoliday(day) ? calendar.openOnOrAfter(day) : day;
            case MONDAY_IF_WEEKEND -> afterWeekend(day);
            case NEXT_POSTAL_DAY -> OfficeCalendar.mailOnOrAfter(day);
        };
    }

    private static LocalDate afterWeekend(LocalDate day) {
        return day.getDayOfWeek() == DayOfWeek.SATURDAY
                ? day.plusDays(2)
                : day.getDayOfWeek() == DayOfWeek.SUNDAY ? day.plusDays(1) : day;
    }
}
