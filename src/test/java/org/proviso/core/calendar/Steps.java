package org.proviso.core.calendar;

import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/** Typed deadlines as the project's tables of published ones spell them. */
final class Steps {

    private Steps() {}

    /** {@code -15 days}, {@code 5 business_days}, or the nth of a weekday: {@code -4 saturday}. */
    static DeadlineOffset of(int count, String unit) {
        return switch (unit) {
            case "days" -> new DeadlineOffset.Days(count);
            case "business_days" -> new DeadlineOffset.BusinessDays(count);
            default -> new DeadlineOffset.Weekday(count, DayOfWeek.valueOf(unit.toUpperCase(Locale.ROOT)));
        };
    }

    /** The eleven of 5 USC 6103(a), or all but the October one. */
    static Set<Holiday> holidays(String which) {
        Set<Holiday> federal = Holiday.federal();
        if (which.equals("federal_but_columbus_day")) {
            federal.remove(Holiday.COLUMBUS_DAY);
        }
        return federal;
    }

    /** What a closed day does; where the source does not tell, all of them, since then it must not matter. */
    static Set<ClosedDayRule> ifClosed(String word) {
        return word.equals("any")
                ? EnumSet.allOf(ClosedDayRule.class)
                : EnumSet.of(Arrays.stream(ClosedDayRule.values())
                        .filter(rule -> rule.code().equals(word))
                        .findFirst()
                        .orElseThrow());
    }
}
