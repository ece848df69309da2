package org.proviso.core.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.calendar.ClosedDayRule;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.calendar.DeadlineAnchor;
import org.proviso.core.calendar.DeadlineOffset;
import org.proviso.core.calendar.DeadlineRule;
import org.proviso.core.calendar.TimeOfDay;

class DeadlineBookTest {

    /** 52 USC 20507(a)(1): no state closes registration earlier than 30 days before a federal election. */
    @ParameterizedTest
    @CsvSource({
        "-45, same_day, 2026-10-04",
        "-31, same_day, 2026-10-04",
        "-30, same_day, 2026-10-04",
        "-29, same_day, 2026-10-05",
        "-15, same_day, 2026-10-19",
        // 4 October 2026 is a Sunday: moved forward it is in the state's hands, moved backward the bound cuts it.
        "-30, next_open_day, 2026-10-05",
        "-30, previous_open_day, 2026-10-04"
    })
    void closes_registration_at_most_thirty_days_before(int days, String ifClosed, LocalDate last) {
        for (Rule rule : new Rule[] {Rules.REGISTER_IN_PERSON, Rules.REGISTER_ONLINE, Rules.REGISTER_MAIL_POSTMARK}) {
            DeadlineBook book = ChangedPack.of("us")
                    .with(
                            rule,
                            deadline(DeadlineAnchor.ELECTION_DAY, days, ClosedDayRule.valueOf(ifClosed.toUpperCase())))
                    .book();
            Deadline deadline = book.of(rule).orElseThrow();

            assertThat(deadline.day()).isEqualTo(last);
            assertThat(deadline.lastMoment()).isEqualTo(last.atTime(17, 0));
        }
    }

    @Test
    void bounds_nothing_but_registration_and_nothing_without_the_federal_rule() {
        RuleValue early = deadline(DeadlineAnchor.ELECTION_DAY, -45, ClosedDayRule.SAME_DAY);
        assertThat(ChangedPack.of("us").with(Rules.GATE_REVIEW, early).book().of(Rules.GATE_REVIEW))
                .hasValueSatisfying(gate -> assertThat(gate.day()).isEqualTo("2026-09-19"));
        assertThat(ChangedPack.of("us")
                        .without(Rules.REGISTRATION_BOUND_DAYS)
                        .with(Rules.REGISTER_ONLINE, early)
                        .book()
                        .of(Rules.REGISTER_ONLINE))
                .hasValueSatisfying(last -> assertThat(last.day()).isEqualTo("2026-09-19"));
    }

    /** The example certifies 14 days after the election and takes mail ballots for 7 days. */
    @ParameterizedTest
    @CsvSource({"CERTIFICATION, 2026-11-16", "MAIL_RECEIPT, 2026-11-09", "ELECTION_DAY, 2026-11-02"})
    void counts_from_days_that_are_known(DeadlineAnchor anchor, LocalDate day) {
        DeadlineBook book = ChangedPack.of("example")
                .with(Rules.DECISION, deadline(anchor, -1, ClosedDayRule.SAME_DAY))
                .book();
        assertThat(book.of(Rules.DECISION))
                .hasValueSatisfying(deadline -> assertThat(deadline.day()).isEqualTo(day));
    }

    @ParameterizedTest
    @CsvSource({"NOTICE_SENT", "FINDING_MADE", "BOARD_MEETING"})
    void cannot_date_what_counts_from_an_act_until_the_act_is_done(DeadlineAnchor anchor) {
        Rule cure = Rule.cure(Ask.IDENTIFICATION);
        DeadlineBook book = ChangedPack.of("example")
                .with(cure, deadline(anchor, 3, ClosedDayRule.NEXT_OPEN_DAY))
                .book();

        assertThat(book.of(cure)).isEmpty();
        assertThat(book.of(cure, LocalDate.of(2026, 11, 4).atTime(9, 0)))
                .hasValueSatisfying(
                        deadline -> assertThat(deadline.lastMoment()).isEqualTo("2026-11-09T17:00"));
    }

    @Test
    void has_no_deadline_where_the_pack_has_none() {
        DeadlineBook book = ChangedPack.of("example").book();
        assertThat(book.of(Rules.GATE_OPEN)).isEmpty();
        assertThat(book.of(Rule.cure(Ask.ELIGIBILITY))).isEmpty();
        assertThat(book.of(Rule.cure(Ask.ELIGIBILITY), LocalDate.of(2026, 11, 4).atTime(9, 0)))
                .isEmpty();
    }

    @Test
    void counts_on_the_calendar_of_the_county() {
        ResolvedPack example = ChangedPack.of("example").resolved();
        DeadlineBook plain = DeadlineBook.of(example, Set.of());
        DeadlineBook closed = DeadlineBook.of(example, Set.of(LocalDate.of(2026, 11, 10)));
        Rule cure = Rule.cure(Ask.IDENTIFICATION);

        assertThat(plain.of(cure).orElseThrow().day()).isEqualTo("2026-11-10");
        // The tenth is closed for this election, the eleventh a holiday of the pack.
        assertThat(closed.of(cure).orElseThrow().day()).isEqualTo("2026-11-12");
        assertThat(closed.of(cure).orElseThrow().wasMoved()).isTrue();
    }

    @Test
    void takes_the_hour_of_closing_from_the_pack_and_five_where_it_has_none() {
        RuleValue rule = new RuleValue.Dated(new DeadlineRule(
                DeadlineAnchor.ELECTION_DAY,
                new DeadlineOffset.Weekday(1, DayOfWeek.FRIDAY),
                TimeOfDay.CLOSE_OF_BUSINESS,
                ClosedDayRule.SAME_DAY));
        ChangedPack half =
                ChangedPack.of("example").with(Rules.OFFICE_CLOSES, new RuleValue.Time(LocalTime.of(16, 30)));

        assertThat(half.with(Rules.DECISION, rule)
                        .book()
                        .of(Rules.DECISION)
                        .orElseThrow()
                        .lastMoment())
                .isEqualTo("2026-11-06T16:30");
        assertThat(half.without(Rules.OFFICE_CLOSES)
                        .book()
                        .of(Rules.DECISION)
                        .orElseThrow()
                        .lastMoment())
                .isEqualTo("2026-11-06T17:00");
    }

    private static RuleValue deadline(DeadlineAnchor anchor, int days, ClosedDayRule ifClosed) {
        return new RuleValue.Dated(new DeadlineRule(
                anchor, new DeadlineOffset.Days(days), TimeOfDay.parse("17:00").orElseThrow(), ifClosed));
    }
}
