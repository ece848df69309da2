package org.proviso.core.calendar;

import java.time.LocalDate;
import org.proviso.core.Code;

/** What happens to a deadline that falls on a day when the office is closed. */
public enum IfClosed implements Code {
    SAME_DAY,
    NEXT_OPEN_DAY,
    PREVIOUS_OPEN_DAY;

    LocalDate move(LocalDate day, OfficeCalendar calendar) {
        return switch (this) {
            case SAME_DAY -> day;
            case NEXT_OPEN_DAY -> calendar.openOnOrAfter(day);
            case PREVIOUS_OPEN_DAY -> calendar.openOnOrBefore(day);
        };
    }
}
