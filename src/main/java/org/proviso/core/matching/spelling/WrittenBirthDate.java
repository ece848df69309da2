package org.proviso.core.matching.spelling;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What can be read of a date of birth that a voter wrote: {@code 1980}, {@code 13/40/1980}, {@code 02/29/1935}. A part that
 * cannot be read, or that no calendar has, is 0. Of 13/05/1980, whose month would be none, day and month are exchanged. A
 * year has four digits: 80 is never guessed.
 */
public record WrittenBirthDate(int year, int month, int day) {

    /** Nothing can be read. */
    public static final WrittenBirthDate NOTHING = new WrittenBirthDate(0, 0, 0);

    private static final int YEAR_DIGITS = 4;
    private static final int MONTHS_OF_A_YEAR = 12;
    private static final int LONGEST_MONTH = 31;
    private static final int A_LEAP_YEAR = 2_000;

    /** Reads month, day and year in the order in which Americans write them, or the year first. */
    public static WrittenBirthDate read(String text) {
        return new Parts(text).read();
    }

    /** The date, where the text is one of the calendar as Americans write it. */
    public static Optional<LocalDate> date(String text) {
        Parts parts = new Parts(text);
        WrittenBirthDate read = parts.read();
        boolean isWhole = read.year != 0 && read.month != 0 && read.day != 0;
        return isWhole && !parts.isExchanged()
                ? Optional.of(LocalDate.of(read.year, read.month, read.day))
                : Optional.empty();
    }

    /** Whether anything can be read. */
    public boolean isAnything() {
        return year != 0 || month != 0 || day != 0;
    }

    private static WrittenBirthDate of(int year, int month, int day) {
        int readMonth = month <= MONTHS_OF_A_YEAR ? month : 0;
        return new WrittenBirthDate(year, readMonth, readMonth != 0 && isOnCalendar(year, readMonth, day) ? day : 0);
    }

    /** A year that cannot be read may be a leap year. */
    private static boolean isOnCalendar(int year, int month, int day) {
        LocalDate begins = LocalDate.of(year == 0 ? A_LEAP_YEAR : year, Month.of(month), 1);
        return day <= begins.lengthOfMonth();
    }

    /** The numbers and the month's name as they come. */
    private static final class Parts {

        private static final Pattern PART = Pattern.compile("\\d+|\\p{L}{3,}");
        private static final Pattern RUN = Pattern.compile("\\d{8}");
        private static final List<String> MONTHS =
                List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

        private int year;
        private int named;
        private int first;
        private int second;
        private int others;

        Parts(String text) {
            Matcher part = PART.matcher(apart(text.strip()));
            while (part.find()) {
                if (Character.isDigit(part.group().charAt(0))) {
                    number(part.group());
                } else {
                    named = Math.max(
                            named,
                            1 + MONTHS.indexOf(part.group().substring(0, 3).toLowerCase(Locale.ROOT)));
                }
            }
        }

        /** Eight digits in a run are month, day and year, or the year first. */
        private static String apart(String text) {
            if (!RUN.matcher(text).matches()) {
                return text;
            }
            boolean endsInYear = isYear(text.substring(YEAR_DIGITS));
            return endsInYear
                    ? text.substring(0, 2) + "/" + text.substring(2, YEAR_DIGITS) + "/" + text.substring(YEAR_DIGITS)
                    : text.substring(0, YEAR_DIGITS) + "/" + text.substring(YEAR_DIGITS, 6) + "/" + text.substring(6);
        }

        private static boolean isYear(String digits) {
            return digits.length() == YEAR_DIGITS && digits.compareTo("1800") >= 0 && digits.compareTo("2199") <= 0;
        }

        private void number(String digits) {
            if (year == 0 && isYear(digits)) {
                year = Integer.parseInt(digits);
            } else if (digits.length() > 2) {
                others++;
            } else if (first == 0) {
                first = Integer.parseInt(digits);
            } else if (second == 0) {
                second = Integer.parseInt(digits);
            } else {
                others++;
            }
        }

        boolean isExchanged() {
            return named == 0
                    && first > MONTHS_OF_A_YEAR
                    && first <= LONGEST_MONTH
                    && second > 0
                    && second <= MONTHS_OF_A_YEAR;
        }

        /** Where one number is too many it is a year of two digits, or nothing but the year can be told. */
        WrittenBirthDate read() {
            if (others > (year == 0 ? 1 : 0)) {
                return new WrittenBirthDate(year, 0, 0);
            }
            if (named != 0) {
                return of(year, named, first);
            }
            return isExchanged() ? of(year, second, first) : of(year, first, second);
        }
    }
}
