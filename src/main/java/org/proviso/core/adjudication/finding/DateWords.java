package org.proviso.core.adjudication.finding;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Dates and times as Americans write them. */
public final class DateWords {

    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("MM/dd/yyyy", Locale.US);
    private static final DateTimeFormatter LONG = DateTimeFormatter.ofPattern("EEEE, MMMM d, yyyy", Locale.US);
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("h:mm a", Locale.US);

    private static final Pattern LICENSE = Pattern.compile("\\bdrivers license\\b");
    private static final Pattern ID = Pattern.compile("\\bid\\b");

    private DateWords() {}

    /** {@code 03/12/1984}; {@code not stated} for none. */
    public static String date(@Nullable LocalDate date) {
        return date == null ? "not stated" : SHORT.format(date);
    }

    /** {@code Tuesday, November 3, 2026}. */
    public static String longDate(LocalDate date) {
        return LONG.format(date);
    }

    /** {@code 11/03/2026 6:52 pm}; {@code not stated} for none. */
    public static String moment(@Nullable LocalDateTime moment) {
        return moment == null ? "not stated" : SHORT.format(moment) + " " + hour(moment);
    }

    /** A code word as it reads: {@code driver's license}, {@code state ID}, {@code wait for its decision}. */
    public static String code(String code) {
        String spaced = LICENSE.matcher(code.replace('_', ' ')).replaceAll("driver's license");
        return ID.matcher(spaced).replaceAll("ID");
    }

    /** {@code 6:52 pm}. */
    public static String hour(LocalDateTime moment) {
        return HOUR.format(moment).toLowerCase(Locale.ROOT);
    }
}
