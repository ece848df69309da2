package org.proviso.core.matching.spelling;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A birth date as the digits yyyymmdd, spread; 0 when unknown. A roll's placeholder is unknown, never a difference. */
public final class PackedDate {

    public static final int UNKNOWN = 0;

    /** No packed date: it has digits above nine. */
    public static final int NOT_A_DATE = -1;

    private static final int LENGTH = 10;

    private static final int DECEMBER = 0x12;

    /** What registration files hold where no birth date was given (common practice). */
    private static final Set<Integer> PLACEHOLDERS =
            Set.of(0x18000101, 0x18500101, 0x19000101, 0x19010101, 0x11111111, 0x00010101);

    private PackedDate() {}

    public static int of(@Nullable LocalDate date) {
        if (date == null || date.getYear() < 1 || date.getYear() > 9_999) {
            return UNKNOWN;
        }
        int packed = Digits.spread(date.getYear() * 10_000 + date.getMonthValue() * 100 + date.getDayOfMonth());
        return PLACEHOLDERS.contains(packed) ? UNKNOWN : packed;
    }

    /** A cell written as 1974-03-09; an empty one is unknown, and what no calendar has is {@link #NOT_A_DATE}. */
    public static int of(byte[] bytes, int start, int end) {
        if (start == end) {
            return UNKNOWN;
        }
        if (end - start != LENGTH || bytes[start + 4] != '-' || bytes[start + 7] != '-') {
            return NOT_A_DATE;
        }
        int packed = 0;
        for (int i = start; i < end; i += i == start + 3 || i == start + 6 ? 2 : 1) {
            int digit = bytes[i] - '0';
            if (digit < 0 || digit > 9) {
                return NOT_A_DATE;
            }
            packed = packed << 4 | digit;
        }
        if (!isOnCalendar(packed)) {
            return NOT_A_DATE;
        }
        return year(packed) == 0 || PLACEHOLDERS.contains(packed) ? UNKNOWN : packed;
    }

    private static boolean isOnCalendar(int packed) {
        int month = (packed >>> 12 & 15) * 10 + (packed >>> 8 & 15);
        int day = (packed >>> 4 & 15) * 10 + (packed & 15);
        return month >= 1
                && month <= 12
                && day >= 1
                && (day <= 28
                        || day
                                <= YearMonth.of(Digits.value(year(packed)), month)
                                        .lengthOfMonth());
    }

    /** The year's digits, spread. */
    public static int year(int date) {
        return date >>> 16;
    }

    /** The digits of year and month, spread. */
    public static int withoutDay(int date) {
        return date >>> 8;
    }

    /** The digits of year and day, spread. */
    public static int withoutMonth(int date) {
        return date & 0xffff00ff;
    }

    /** The digits of month and day, spread. */
    public static int day(int date) {
        return date & 0xffff;
    }

    /** The date as Americans write it, or an empty text when it is unknown. */
    public static String words(int date) {
        return date == UNKNOWN
                ? ""
                : String.format(Locale.US, "%02x/%02x/%04x", date >>> 8 & 0xff, date & 0xff, date >>> 16);
    }

    /** The date with day and month exchanged, or unknown when that is none. */
    public static int swapped(int date) {
        int day = date & 0xff;
        return day > DECEMBER ? UNKNOWN : (date & 0xffff0000) | day << 8 | (date >>> 8 & 0xff);
    }

    /** How many of year, month and day differ. */
    public static int partsApart(int a, int b) {
        int difference = a ^ b;
        return ((difference & 0xffff0000) == 0 ? 0 : 1)
                + ((difference & 0xff00) == 0 ? 0 : 1)
                + ((difference & 0xff) == 0 ? 0 : 1);
    }

    /** Whether only the years differ, and by one. */
    public static boolean yearOff(int a, int b) {
        return (a & 0xffff) == (b & 0xffff) && Math.abs(Digits.value(year(a)) - Digits.value(year(b))) == 1;
    }
}
