package org.proviso.files;

import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.calendar.TimeOfDay;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.DeadlineList;

/**
 * The deadlines of an election as a calendar file that other programs read (RFC 5545): a moment for a deadline with an
 * hour, a whole day for one that ends with the day. The same rules give the same file, byte for byte.
 */
public final class CalendarFile {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyyMMdd", Locale.ROOT);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss", Locale.ROOT);

    /** A line is folded before it is longer than this many octets (RFC 5545, section 3.1). */
    private static final int OCTETS = 75;

    private CalendarFile() {}

    /** The calendar; with a zone its times are in UTC, without one they are local to the reader. */
    public static String text(DeadlineBook book, @Nullable ZoneId zone) {
        StringBuilder text = new StringBuilder();
        line(text, "BEGIN:VCALENDAR");
        line(text, "VERSION:2.0");
        line(text, "PRODID:-//Proviso//Deadlines//EN");
        line(text, "CALSCALE:GREGORIAN");
        line(
                text,
                "X-WR-CALNAME:"
                        + escaped(book.pack().pack().name() + ", election of "
                                + book.pack().electionDate()));
        DeadlineList.inOrder(book).forEach(listed -> event(text, book, listed, zone));
        line(text, "END:VCALENDAR");
        return text.toString();
    }

    private static void event(StringBuilder text, DeadlineBook book, DeadlineList.Line listed, @Nullable ZoneId zone) {
        Deadline deadline = listed.deadline().orElseThrow();
        line(text, "BEGIN:VEVENT");
        line(
                text,
                "UID:" + listed.rule().key() + "-" + book.pack().electionDate() + "-"
                        + book.pack().pack().id() + "@proviso");
        // A stamp is asked for; the election's own day keeps the file the same however often it is written.
        line(text, "DTSTAMP:" + DAY.format(book.pack().electionDate()) + "T000000Z");
        if (deadline.lastMoment().toLocalTime().equals(TimeOfDay.END_OF_DAY.time())) {
            line(text, "DTSTART;VALUE=DATE:" + DAY.format(deadline.day()));
        } else {
            line(text, "DTSTART:" + moment(deadline.lastMoment(), zone));
        }
        line(text, "SUMMARY:" + escaped(listed.words()));
        line(text, "DESCRIPTION:" + escaped(description(listed)));
        line(text, "TRANSP:TRANSPARENT");
        line(text, "END:VEVENT");
    }

    private static String description(DeadlineList.Line listed) {
        String sure = listed.given().basis() == Basis.MEMORY
                ? " From memory: the office must sign a county ruling on it."
                : "";
        return listed.given().value().inWords() + ". "
                + listed.given().reference().words() + "." + sure + " Illustrative; local law and counsel govern.";
    }

    private static String moment(LocalDateTime local, @Nullable ZoneId zone) {
        return zone == null
                ? MOMENT.format(local)
                : MOMENT.format(local.atZone(zone).withZoneSameInstant(ZoneOffset.UTC)) + "Z";
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replace("\n", "\\n");
    }

    /** A content line, folded by octets and never within a character. */
    private static void line(StringBuilder text, String content) {
        int octets = 0;
        for (int code : content.codePoints().toArray()) {
            String character = Character.toString(code);
            int length = character.getBytes(StandardCharsets.UTF_8).length;
            if (octets + length > OCTETS) {
                text.append("\r\n ");
                octets = 1;
            }
            text.append(character);
            octets += length;
        }
        text.append("\r\n");
    }
}
