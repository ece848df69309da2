package org.proviso.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proviso.core.calendar.DeadlineAnchor;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.DeadlineList;
import org.proviso.core.rules.PackResolver;
import org.proviso.files.packs.RulePacks;

class CalendarFileTest {

    private static final LocalDate ELECTION_DAY = LocalDate.of(2026, 11, 3);

    private static DeadlineBook book(String pack) {
        return DeadlineBook.of(PackResolver.resolve(RulePacks.load(pack), ELECTION_DAY, List.of()), Set.of());
    }

    /** 10 November 2026, 5 pm in Denver is midnight in UTC, standard time having come back on 1 November. */
    @Test
    void gives_the_moment_in_the_countys_zone_and_a_whole_day_for_what_ends_with_it() {
        String denver = unfolded(CalendarFile.text(book("example"), ZoneId.of("America/Denver")));

        assertThat(event(denver, "cure.identification")).contains("\r\nDTSTART:20261111T000000Z\r\n");
        assertThat(event(denver, "registration.online")).contains("\r\nDTSTART;VALUE=DATE:20261019\r\n");
        assertThat(event(denver, "registration.in_person")).contains("\r\nDTSTART:20261019T230000Z\r\n");
    }

    @Test
    void leaves_the_hour_to_the_reader_where_no_zone_is_known() {
        String local = unfolded(CalendarFile.text(book("example"), null));

        assertThat(event(local, "cure.identification"))
                .contains("\r\nDTSTART:20261110T170000\r\n")
                .contains("SUMMARY:The deadline for the voter to bring or send identification")
                .contains("Example Election Code (invented) 6.2 (2020)")
                .contains("counsel govern");
    }

    @Test
    void has_every_dated_deadline_once_and_folds_its_lines() {
        for (String pack : RulePacks.bundled()) {
            String text = CalendarFile.text(book(pack), null);

            assertThat(text.split("BEGIN:VEVENT", -1))
                    .hasSize(DeadlineList.inOrder(book(pack)).size() + 1);
            assertThat(text.split("UID:", -1).length)
                    .isEqualTo(unfolded(text)
                                    .lines()
                                    .filter(line -> line.startsWith("UID:"))
                                    .distinct()
                                    .count()
                            + 1);
            assertThat(text.split("\r\n"))
                    .allSatisfy(line -> assertThat(line.getBytes(StandardCharsets.UTF_8).length)
                            .isLessThanOrEqualTo(75));
            assertThat(text).endsWith("END:VCALENDAR\r\n").isEqualTo(CalendarFile.text(book(pack), null));
        }
    }

    @Test
    void dates_what_counts_from_the_meeting_once_the_meeting_is_set() {
        DeadlineBook kansas = book("us-ks");
        String set = CalendarFile.text(
                kansas.with(DeadlineAnchor.BOARD_MEETING, LocalDateTime.of(2026, 11, 16, 10, 0)), null);

        assertThat(CalendarFile.text(kansas, null)).doesNotContain("UID:cure.identification");
        assertThat(event(unfolded(set), "cure.identification")).contains("\r\nDTSTART:20261116T100000\r\n");
    }

    private static String unfolded(String text) {
        return text.replace("\r\n ", "");
    }

    private static String event(String text, String rule) {
        int at = text.indexOf("UID:" + rule + "-");
        assertThat(at).as(rule).isPositive();
        return text.substring(at, text.indexOf("END:VEVENT", at));
    }
}
