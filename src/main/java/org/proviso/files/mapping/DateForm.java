package org.proviso.files.mapping;

import java.text.ParsePosition;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.time.temporal.TemporalAccessor;
import java.time.temporal.TemporalQueries;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How an office writes dates, as {@code MM/DD/YYYY}, {@code YYYYMMDD} or {@code DD-MON-YY}; with {@code HH:MM} (and AM)
 * also the time of day. Two-digit years are read within the hundred years that begin with {@code pivot}. Between signs
 * a month, day or hour may have one digit. A form that is none of the known ones is refused.
 */
public final class DateForm {

    /** The forms that are recognized, those met most often first. */
    public static final List<String> DATES = List.of(
            "YYYY-MM-DD",
            "MM/DD/YYYY",
            "MM-DD-YYYY",
            "YYYYMMDD",
            "MMDDYYYY",
            "MM/DD/YY",
            "MM-DD-YY",
            "DD-MON-YYYY",
            "DD-MON-YY",
            "MON DD, YYYY",
            "YYYY/MM/DD",
            "DD/MM/YYYY",
            "DD.MM.YYYY",
            "YYMMDD",
            "MMDDYY");

    private static final List<String> TIMES = List.of(" HH:MM", " HH:MM AM", "THH:MM", " HHMM");

    /** The times that are not hours, minutes and seconds with a colon between, by their patterns. */
    private static final Map<String, String> OTHER_TIMES = Map.of(" HH:MM AM", " h:mm[:ss][ ]a", " HHMM", " HHmm");

    private static final int LONGEST = 40;

    private static final List<String> PARTS = List.of("YYYY", "YY", "MON", "MM", "DD");

    private final String form;
    private final int pivot;
    private final DateTimeFormatter format;

    private DateForm(String form, int pivot) {
        this.form = form;
        this.pivot = pivot;
        String time = TIMES.stream().filter(form::endsWith).findFirst().orElse("");
        this.format = format(form.substring(0, form.length() - time.length()), time, pivot);
    }

    /** The form spelled so, or empty where it is not a known one. */
    public static Optional<DateForm> of(String form, int pivot) {
        boolean known = DATES.stream()
                .anyMatch(date -> form.equals(date) || TIMES.stream().anyMatch(time -> form.equals(date + time)));
        return known ? Optional.of(new DateForm(form, pivot)) : Optional.empty();
    }

    /** Every known form, dates before dates with a time of day. */
    public static List<DateForm> all(int pivot) {
        return Stream.concat(
                        DATES.stream(),
                        TIMES.stream().flatMap(time -> DATES.stream().map(date -> date + time)))
                .map(form -> new DateForm(form, pivot))
                .toList();
    }

    public String form() {
        return form;
    }

    /** The first of the hundred years of two-digit years. */
    public int pivot() {
        return pivot;
    }

    /** Whether the century of a year is not written. */
    public boolean hasShortYear() {
        return form.contains("YY") && !form.contains("YYYY");
    }

    boolean hasTime() {
        return form.contains("HH");
    }

    /** The date as our files have it; empty where the value is not of this form. */
    Optional<String> date(String value) {
        return parsed(value).map(at -> LocalDate.from(at).toString());
    }

    /** The date and time as our files have them; without a time of day the value does not fit. */
    Optional<String> moment(String value) {
        return parsed(value)
                .filter(at -> at.query(TemporalQueries.localTime()) != null)
                .map(at -> LocalDateTime.of(LocalDate.from(at), LocalTime.from(at)))
                .map(at -> at.withNano(0).toString());
    }

    /** Looked at without resolving first: an exception for each text that is no date takes too long in a large file. */
    private Optional<TemporalAccessor> parsed(String value) {
        ParsePosition read = new ParsePosition(0);
        if (value.length() > LONGEST
                || format.parseUnresolved(value, read) == null
                || read.getIndex() < value.length()) {
            return Optional.empty();
        }
        try {
            return Optional.of(format.parse(value));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static DateTimeFormatter format(String date, String time, int pivot) {
        DateTimeFormatterBuilder builder = new DateTimeFormatterBuilder().parseCaseInsensitive();
        boolean packed = date.chars().allMatch(Character::isLetter);
        for (int at = 0; at < date.length(); ) {
            String part = part(date, at);
            append(builder, part, packed, pivot);
            at += part.length();
        }
        if (OTHER_TIMES.containsKey(time)) {
            builder.appendPattern(OTHER_TIMES.get(time));
        } else if (!time.isEmpty()) {
            builder.appendLiteral(time.charAt(0))
                    .appendPattern("H:mm[:ss]")
                    .optionalStart()
                    .appendFraction(ChronoField.NANO_OF_SECOND, 0, 9, true)
                    .optionalEnd();
        }
        return builder.toFormatter(Locale.US).withResolverStyle(ResolverStyle.STRICT);
    }

    /** The part of a form that begins there: a year, month or day, or one sign between. */
    private static String part(String date, int at) {
        return PARTS.stream()
                .filter(part -> date.startsWith(part, at))
                .findFirst()
                .orElse(date.substring(at, at + 1));
    }

    private static void append(DateTimeFormatterBuilder builder, String part, boolean packed, int pivot) {
        switch (part) {
            case "YYYY" -> builder.appendValue(ChronoField.YEAR, 4);
            case "YY" -> builder.appendValueReduced(ChronoField.YEAR, 2, 2, pivot);
            case "MM" -> builder.appendPattern(packed ? "MM" : "M");
            case "DD" -> builder.appendPattern(packed ? "dd" : "d");
            case "MON" -> builder.appendPattern("MMM");
            default -> builder.appendLiteral(part);
        }
    }
}
