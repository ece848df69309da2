package org.proviso.core.calendar;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;

/** The hour at which a deadline day ends: a clock time, or the law's own words for one. Local to the county. */
public record TimeOfDay(Kind kind, LocalTime time) {

    /** A clock time, the office's closing hour, midnight, or the very hour of the act from which it counts. */
    public enum Kind {
        CLOCK,
        CLOSE_OF_BUSINESS,
        END_OF_DAY,
        THAT_HOUR
    }

    public static final TimeOfDay CLOSE_OF_BUSINESS = new TimeOfDay(Kind.CLOSE_OF_BUSINESS, LocalTime.MIN);
    public static final TimeOfDay END_OF_DAY = new TimeOfDay(Kind.END_OF_DAY, LocalTime.of(23, 59, 59));

    /** The hour of the act itself: "within 24 hours of the notice", "before the meeting begins". */
    public static final TimeOfDay THAT_HOUR = new TimeOfDay(Kind.THAT_HOUR, LocalTime.MIN);

    private static final DateTimeFormatter SPOKEN = DateTimeFormatter.ofPattern("h:mm a", Locale.US);

    /** Reads {@code 17:00} and the words {@code close_of_business}, {@code end_of_day}, {@code that_hour}; empty for anything else. */
    public static Optional<TimeOfDay> parse(String text) {
        return switch (text) {
            case "close_of_business" -> Optional.of(CLOSE_OF_BUSINESS);
            case "end_of_day" -> Optional.of(END_OF_DAY);
            case "that_hour" -> Optional.of(THAT_HOUR);
            default -> clock(text);
        };
    }

    private static Optional<TimeOfDay> clock(String text) {
        try {
            return Optional.of(new TimeOfDay(Kind.CLOCK, LocalTime.parse(text)));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    /** The last moment that is still in time, given the hour at which the office closes. */
    public LocalTime lastMoment(LocalTime officeCloses) {
        return kind == Kind.CLOSE_OF_BUSINESS ? officeCloses : time;
    }

    /** As files spell it: {@code 17:00}, {@code close of business}, {@code end of day}. */
    public String spelled() {
        return kind == Kind.CLOCK
                ? time.toString()
                : kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** As it reads in a sentence: {@code 5:00 pm}. */
    public String words() {
        return switch (kind) {
            case CLOCK -> SPOKEN.format(time).toLowerCase(Locale.ROOT);
            case THAT_HOUR -> "at that hour";
            default -> spelled();
        };
    }
}
