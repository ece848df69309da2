package org.proviso.core.calendar;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Set;

/** The days on which the county office is open: not on weekends, kept holidays, or days closed for this election. */
public record OfficeCalendar(Set<Holiday> holidays, Set<LocalDate> daysClosed) {

    public boolean isOpen(LocalDate day) {
        return !isWeekend(day) && !daysClosed.contains(day) && !isHoliday(day);
    }

    /** The same day if open, else the first open day after it. */
    public LocalDate openOnOrAfter(LocalDate day) {
        LocalDate open = day;
        while (!isOpen(open)) {
            open = open.plusDays(1);
        }
        return open;
    }

    /** The same day if open, else the last open day before it. */
    public LocalDate openOnOrBefore(LocalDate day) {
        LocalDate open = day;
        while (!isOpen(open)) {
            open = open.minusDays(1);
        }
        return open;
    }

    /** Moves by that many open days, backward when negative; the day started from is not counted. */
    public LocalDate plusOpenDays(LocalDate day, int openDays) {
        LocalDate moved = day;
        for (int left = Math.abs(openDays); left > 0; ) {
            moved = moved.plusDays(openDays < 0 ? -1 : 1);
            left -= isOpen(moved) ? 1 : 0;
        }
        return moved;
    }

    /** The same day if there is mail, else the next day with mail: not on Sundays and federal holidays. */
    static LocalDate mailOnOrAfter(LocalDate day) {
        OfficeCalendar federal = new OfficeCalendar(Holiday.federal(), Set.of());
        LocalDate mail = day;
        while (mail.getDayOfWeek() == DayOfWeek.SUNDAY || federal.isHoliday(mail)) {
            mail = mail.plusDays(1);
        }
        return mail;
    }

    private static boolean isWeekend(LocalDate day) {
        return day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY;
    }

    /** Whether a kept holiday is observed on that day; days closed for this election only are none. */
    public boolean isHoliday(LocalDate day) {
        // New Year's Day may be observed on the last day of the year before.
        return holidays.stream()
                .anyMatch(holiday ->
                        observedOn(holiday, day, day.getYear()) || observedOn(holiday, day, day.getYear() + 1));
    }

    private static boolean observedOn(Holiday holiday, LocalDate day, int year) {
        return holiday.keptIn(year) && holiday.observed(year).equals(day);
    }
}
