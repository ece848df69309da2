package org.proviso.core.calendar;

import java.time.LocalDate;
import java.time.LocalTime;

/**
 * A typed deadline rule: so far from an anchor, at an hour, moved by the closed-day rule of its channel. There is no
 * expression language; what these parts cannot say needs a new part.
 */
public record DeadlineRule(Anchor anchor, Step step, TimeOfDay time, IfClosed ifClosed) {

    /** The deadline for that anchor day. */
    public Deadline on(LocalDate anchorDay, OfficeCalendar calendar, LocalTime officeCloses) {
        LocalDate counted = step.from(anchorDay, calendar);
        LocalDate day = ifClosed.move(counted, calendar);
        return new Deadline(day, day.atTime(time.lastMoment(officeCloses)), counted, this);
    }

    /** As it reads in a report: {@code 7 days after election day, 5:00 pm; if closed, the next open day}. */
    public String words() {
        String moved = ifClosed == IfClosed.SAME_DAY
                ? ""
                : "; if closed, the " + ifClosed.code().replace('_', ' ');
        return step.words() + " " + anchor.words() + ", " + time.words() + moved;
    }
}
