package org.proviso.ui;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Days and times on the county's clock as Americans write them. */
public final class UsDates {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MMMM d, yyyy", Locale.US);
    private static final DateTimeFormatter WEEKDAY = DateTimeFormatter.ofPattern("EEEE, MMMM d, yyyy", Locale.US);
    private static final DateTimeFormatter NEAR = DateTimeFormatter.ofPattern("EEE, MMM d", Locale.US);
    private static final DateTimeFormatter BRIEF = DateTimeFormatter.ofPattern("MMM d", Locale.US);
    private static final DateTimeFormatter FULL_HOUR = DateTimeFormatter.ofPattern("h a", Locale.US);
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("MM/dd/yyyy", Locale.US);
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("h:mm a", Locale.US);

    private UsDates() {}

    /** {@code November 3, 2026}. */
    public static String day(LocalDate day) {
        return DAY.format(day);
    }

    /** {@code Thursday, November 12, 2026}. */
    public static String weekday(LocalDate day) {
        return WEEKDAY.format(day);
    }

    /** {@code 03/12/1984}; {@code not given} for none. */
    public static String digits(@Nullable LocalDate day) {
        return day == null ? "not given" : SHORT.format(day);
    }

    /** {@code 6:52 pm}. */
    public static String hour(LocalTime time) {
        return HOUR.format(time).toLowerCase(Locale.ROOT);
    }

    /** {@code Fri, Nov 13, 5:00 pm}: a moment near by, the year understood. */
    public static String near(LocalDateTime moment) {
        return NEAR.format(moment) + ", " + hour(moment.toLocalTime());
    }

    /** {@code Nov 10, 5 pm}, {@code Nov 10, 5:30 pm}: a moment in a column, the year understood. */
    public static String brief(LocalDateTime moment) {
        LocalTime time = moment.toLocalTime();
        return BRIEF.format(moment) + ", "
                + (time.getMinute() == 0 ? FULL_HOUR.format(time).toLowerCase(Locale.ROOT) : hour(time));
    }

    /** {@code Fri, Nov 13}. */
    public static String near(LocalDate day) {
        return NEAR.format(day);
    }

    /** {@code 11/03/2026, 6:52 pm}; {@code not given} for none. */
    public static String moment(@Nullable LocalDateTime moment) {
        return moment == null ? "not given" : SHORT.format(moment) + ", " + hour(moment.toLocalTime());
    }

    /** {@code 1 day 4 hours}, {@code 35 minutes}: what is left until a moment; {@code passed} after it. */
    public static String left(LocalDateTime now, LocalDateTime until) {
        Duration left = Duration.between(now, until);
        if (left.isNegative()) {
            return "passed";
        }
        if (left.toDays() > 0) {
            return count(left.toDays(), "day") + hoursBeside(left);
        }
        return left.toHours() > 0 ? count(left.toHours(), "hour") : count(left.toMinutes(), "minute");
    }

    private static String hoursBeside(Duration left) {
        return left.toHoursPart() == 0 ? "" : " " + count(left.toHoursPart(), "hour");
    }

    /** {@code 1 envelope}, {@code 2 envelopes}, {@code 20,000 envelopes}. */
    public static String count(long number, String thing) {
        return String.format(Locale.US, "%,d %s%s", number, thing, number == 1 ? "" : "s");
    }
}
