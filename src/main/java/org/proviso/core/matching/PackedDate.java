package org.proviso.core.matching;

import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A birth date as the number yyyymmdd; 0 when unknown. A roll's placeholder is unknown, never a difference. */
final class PackedDate {

    static final int UNKNOWN = 0;

    /** What registration files hold where no birth date was given (common practice). */
    private static final Set<Integer> PLACEHOLDERS =
            Set.of(18000101, 19000101, 19010101, 11111111, 10101, 18500101, 99991231);

    private PackedDate() {}

    static int of(@Nullable LocalDate date) {
        return date == null ? UNKNOWN : of(date.getYear(), date.getMonthValue(), date.getDayOfMonth());
    }

    private static int of(int year, int month, int day) {
        int packed = year * 10_000 + month * 100 + day;
        return PLACEHOLDERS.contains(packed) ? UNKNOWN : packed;
    }

    static int year(int date) {
        return date / 10_000;
    }

    static int month(int date) {
        return date / 100 % 100;
    }

    static int day(int date) {
        return date % 100;
    }

    /** The date with day and month exchanged, or unknown when that is none. */
    static int swapped(int date) {
        return day(date) > 12 ? UNKNOWN : year(date) * 10_000 + day(date) * 100 + month(date);
    }
}
