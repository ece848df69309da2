package org.proviso.ui.field;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Days and times as people type them: {@code 3/12/1984}, {@code 03121984}, {@code 652p}, {@code 6:52 pm}. */
public final class TypedDates {

    /** What to say where a day cannot be read. */
    public static final String LIKE_A_DAY = "Enter the month, day and year: 3/12/1984 or 03121984.";

    /** What to say where a time cannot be read. */
    public static final String LIKE_A_TIME = "Enter the hour and minute: 6:52 pm, 652p or 18:52.";

    private static final Pattern PARTS = Pattern.compile("(\\d{1,2})[/.\\- ](\\d{1,2})[/.\\- ](\\d{4})");
    private static final Pattern RUN = Pattern.compile("(\\d{2})(\\d{2})(\\d{4})");
    private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})");
    private static final Pattern TIME = Pattern.compile("(\\d{1,2}?):?(\\d{2})?\\s*([ap])?\\.?m?\\.?");

    private TypedDates() {}

    /** The day, or empty if it is not a date. A year needs four digits, so 84 is never guessed. */
    public static Optional<LocalDate> day(String typed) {
        String text = typed.strip();
        Matcher iso = ISO.matcher(text);
        if (iso.matches()) {
            return day(iso.group(1), iso.group(2), iso.group(3));
        }
        for (Pattern pattern : new Pattern[] {PARTS, RUN}) {
            Matcher american = pattern.matcher(text);
            if (american.matches()) {
                return day(american.group(3), american.group(1), american.group(2));
            }
        }
        return Optional.empty();
    }

    private static Optional<LocalDate> day(String year, String month, String day) {
        try {
            return Optional.of(LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day)));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** The time, or empty if it is not a time. Without am or pm it is read as 24-hour time. */
    public static Optional<LocalTime> time(String typed) {
        Matcher matcher = TIME.matcher(typed.strip().toLowerCase(Locale.ROOT));
        if (!matcher.matches()) {
            return Optional.empty();
        }
        int hour = Integer.parseInt(matcher.group(1));
        int minute = matcher.group(2) == null ? 0 : Integer.parseInt(matcher.group(2));
        if (matcher.group(3) == null) {
            return matcher.group(2) == null ? Optional.empty() : time(hour, minute);
        }
        boolean afternoon = matcher.group(3).equals("p");
        return hour < 1 || hour > 12 ? Optional.empty() : time(hour % 12 + (afternoon ? 12 : 0), minute);
    }

    private static Optional<LocalTime> time(int hour, int minute) {
        try {
            return Optional.of(LocalTime.of(hour, minute));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
