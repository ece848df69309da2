package org.proviso.core.rules;

import java.time.LocalDate;
import org.proviso.core.Code;
import org.proviso.core.calendar.Holiday;

/**
 * Which elections a dated value is for, where the law tells them apart: by the day of the general election (the
 * Tuesday after the first Monday of November) or by the year.
 */
public enum ElectionsCovered implements Code {
    ALL,
    GENERAL,
    /** Primaries, runoffs and specials: any other day. */
    OTHER,
    EVEN_YEARS,
    ODD_YEARS;

    /** Whether an election on that day is one of them. */
    public boolean include(LocalDate day) {
        return switch (this) {
            case ALL -> true;
            case GENERAL -> isGeneral(day);
            case OTHER -> !isGeneral(day);
            case EVEN_YEARS -> day.getYear() % 2 == 0;
            case ODD_YEARS -> day.getYear() % 2 != 0;
        };
    }

    private static boolean isGeneral(LocalDate day) {
        return day.equals(Holiday.GENERAL_ELECTION_DAY.date(day.getYear()));
    }
}
