package org.proviso.core.calendar;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** How far a deadline lies from its anchor: after it when positive, before it when negative. */
public sealed interface DeadlineOffset {

    /** How a fixed day reads: {@code October 14, 2024}. */
    DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MMMM d, yyyy", Locale.US);

    LocalDate from(LocalDate anchor, OfficeCalendar calendar);

    /** As it reads before the anchor's name: {@code 7 days after}. */
    String words();

    /** Calendar days; zero is the day itself. */
    record Days(int days) implements DeadlineOffset {
        @Override
        public LocalDate from(LocalDate anchor, OfficeCalendar calendar) {
            return anchor.plusDays(days);
        }

        @Override
        public String words() {
            return days == 0 ? "on" : counted(days, "day");
        }
    }

    /** Days on which the office is open. */
    record BusinessDays(int days) implements DeadlineOffset {
        @Override
        public LocalDate from(LocalDate anchor, OfficeCalendar calendar) {
            return calendar.plusOpenDays(anchor, days);
        }

        @Override
        public String words() {
            return counted(days, "business day");
        }
    }

    /** The nth such weekday after or before the anchor, the anchor's own day not counted. */
    record Weekday(int nth, DayOfWeek weekday) implements DeadlineOffset {
        @Override
        public LocalDate from(LocalDate anchor, OfficeCalendar calendar) {
            int ahead = Math.floorMod(weekday.getValue() - anchor.getDayOfWeek().getValue(), 7);
            if (nth > 0) {
                return anchor.plusDays((ahead == 0 ? 7 : ahead) + 7L * (nth - 1));
            }
            int back = ahead == 0 ? 7 : 7 - ahead;
            return anchor.minusDays(back + 7L * (-nth - 1));
        }

        @Override
        public String words() {
            String name = weekday.name().charAt(0) + weekday.name().substring(1).toLowerCase(Locale.ROOT);
            String count = Math.abs(nth) == 1 ? name : ordinal(Math.abs(nth)) + " " + name;
            return count + (nth < 0 ? " before" : " after");
        }
    }

    /** A day fixed by a court for one election: nothing is counted. */
    record Fixed(LocalDate day) implements DeadlineOffset {
        @Override
        public LocalDate from(LocalDate anchor, OfficeCalendar calendar) {
            return day;
        }

        @Override
        public String words() {
            return "on " + DAY.format(day) + ", set for that day instead of counted from";
        }
    }

    /** Counted from a day that is itself counted: the Monday before the 4th Tuesday before election day. */
    record Then(DeadlineOffset first, DeadlineOffset second) implements DeadlineOffset {
        @Override
        public LocalDate from(LocalDate anchor, OfficeCalendar calendar) {
            return second.from(first.from(anchor, calendar), calendar);
        }

        @Override
        public String words() {
            return second.words() + " the " + first.words();
        }
    }

    private static String counted(int days, String unit) {
        int count = Math.abs(days);
        return count + " " + unit + (count == 1 ? "" : "s") + (days < 0 ? " before" : " after");
    }

    private static String ordinal(int n) {
        boolean teen = n % 100 / 10 == 1;
        return n
                + (teen
                        ? "th"
                        : switch (n % 10) {
                            case 1 -> "st";
                            case 2 -> "nd";
                            case 3 -> "rd";
                            default -> "th";
                        });
    }
}
