package org.proviso.core.matching;

import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A birth date as the digits yyyymmdd, spread; 0 when unknown. A roll's placeholder is unknown, never a difference. */
final class PackedDate {

    static final int UNKNOWN = 0;

    private static final int DECEMBER = 0x12;

    /** What registration files hold where no birth date was given (common practice). */
    private static final Set<Integer> PLACEHOLDERS =
            Set.of(0x18000101, 0x18500101, 0x19000101, 0x19010101, 0x11111111, 0x00010101);

    private PackedDate() {}

    static int of(@Nullable LocalDate date) {
        if (date == null || date.getYear() < 1 || date.getYear() > 9_999) {
            return UNKNOWN;
        }
        int packed = Digits.spread(date.getYear() * 10_000 + date.getMonthValue() * 100 + date.getDayOfMonth());
        return PLACEHOLDERS.contains(packed) ? UNKNOWN : packed;
    }

    /** The year's digits, spread. */
    static int year(int date) {
        return date >>> 16;
    }

    /** The date with day and month exchanged, or unknown when that is none. */
    static int swapped(int date) {
        int day = date & 0xff;
        return day > DECEMBER ? UNKNOWN : date & 0xffff0000 | day << 8 | date >>> 8 & 0xff;
    }

    /** Whether only the years differ, and by one. */
    static boolean yearOff(int a, int b) {
        return (a & 0xffff) == (b & 0xffff) && Math.abs(Digits.value(year(a)) - Digits.value(year(b))) == 1;
    }
}
