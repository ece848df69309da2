package org.proviso.core.calendar;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/**
 * A typed deadline rule: so far from an anchor, at an hour, moved by the closed-day rule of its channel. An act after
 * {@code actsUntil} (null where the law does not say) counts as done on the next open day. There is no expression
 * language; what these parts cannot say needs a new part.
 */
public record DeadlineRule(
        DeadlineAnchor anchor,
        DeadlineOffset step,
        TimeOfDay time,
        ClosedDayRule ifClosed,
        @Nullable LocalTime actsUntil) {

    /** A rule that does not care at what hour the act was done from which it counts. */
    public DeadlineRule(DeadlineAnchor anchor, DeadlineOffset step, TimeOfDay time, ClosedDayRule ifClosed) {
        this(anchor, step, time, ifClosed, null);
    }

    /** The deadline for that anchor day. */
    public Deadline on(LocalDate anchorDay, OfficeCalendar calendar, LocalTime officeCloses) {
        return from(anchorDay.atStartOfDay(), calendar, officeCloses);
    }

    /** The deadline for an act at that moment, local to the county. */
    public Deadline from(LocalDateTime act, OfficeCalendar calendar, LocalTime officeCloses) {
        LocalDate counted = step.from(anchorDay(act, calendar), calendar);
        LocalDate day = ifClosed.move(counted, calendar);
        LocalTime hour = time.kind() == TimeOfDay.Kind.THAT_HOUR ? act.toLocalTime() : time.lastMoment(officeCloses);
        return new Deadline(day, day.atTime(hour), counted, this);
    }

    private LocalDate anchorDay(LocalDateTime act, OfficeCalendar calendar) {
        boolean late = actsUntil != null && act.toLocalTime().isAfter(actsUntil);
        return late ? calendar.openOnOrAfter(act.toLocalDate().plusDays(1)) : act.toLocalDate();
    }

    /** As it reads in a report: {@code 7 days after election day, 5:00 pm; if closed, the next open day}. */
    public String words() {
        String late = actsUntil == null
                ? ""
                : "; an act after " + new TimeOfDay(TimeOfDay.Kind.CLOCK, actsUntil).words()
                        + " counts as done on the next open day";
        return step.words() + " " + anchor.words() + ", " + time.words() + ifClosed.words() + late;
    }
}
