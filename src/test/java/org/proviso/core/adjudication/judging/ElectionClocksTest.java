package org.proviso.core.adjudication.judging;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.adjudication.questions.AskStatus;
import org.proviso.core.calendar.ClosedDayRule;
import org.proviso.core.calendar.DeadlineAnchor;
import org.proviso.core.calendar.DeadlineOffset;
import org.proviso.core.calendar.DeadlineRule;
import org.proviso.core.calendar.TimeOfDay;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.Rules;

/** Under the example pack the ask for identification ends on November 10 at 5 pm; its notice is due on the 5th. */
class ElectionClocksTest {

    private static final Rule CURE = Rule.cure(Ask.IDENTIFICATION);

    @ParameterizedTest
    @CsvSource({
        "2026-11-10T17:00, , running",
        "2026-11-10T17:00, 2026-11-04T16:00, running",
        "2026-11-10T17:01, , over_without_notice",
        "2026-11-10T17:01, 2026-11-04T16:00, over",
        "2026-11-10T17:01, 2026-11-05T23:59, over",
        "2026-11-10T17:01, 2026-11-06T08:00, over_without_notice"
    })
    void runs_out_against_the_voter_only_after_notice_in_time(
            LocalDateTime asOf, LocalDateTime noticeSent, String state) {
        assertThat(clocks(ChangedPack.of("example"), asOf, noticeSent)
                        .ask(Ask.IDENTIFICATION)
                        .code())
                .isEqualTo(state);
    }

    @Test
    void asks_for_no_notice_where_the_law_asks_for_none() {
        ChangedPack pack = ChangedPack.of("example").flag(Rule.noticeRequired(Ask.IDENTIFICATION), false);
        assertThat(clocks(pack, afterwards(), null).ask(Ask.IDENTIFICATION)).isEqualTo(AskStatus.OVER);
    }

    @Test
    void asks_for_a_notice_where_nobody_could_source_whether_the_law_does() {
        ChangedPack pack = ChangedPack.of("example").without(Rule.noticeRequired(Ask.IDENTIFICATION));
        assertThat(clocks(pack, afterwards(), null).ask(Ask.IDENTIFICATION)).isEqualTo(AskStatus.OVER_WITHOUT_NOTICE);
    }

    @Test
    void takes_any_notice_where_the_law_sets_no_day_for_it() {
        ChangedPack pack = ChangedPack.of("example").with(Rule.notice(Ask.IDENTIFICATION), new RuleValue.NoDeadline());
        assertThat(clocks(pack, afterwards(), afterwards()).ask(Ask.IDENTIFICATION))
                .isEqualTo(AskStatus.OVER);
    }

    @Test
    void is_not_settled_where_nobody_could_source_the_deadline() {
        assertThat(clocks(ChangedPack.of("example").without(CURE), afterwards(), null)
                        .ask(Ask.IDENTIFICATION))
                .isEqualTo(AskStatus.NOT_SETTLED);
    }

    @Test
    void is_over_from_the_start_where_the_law_gives_no_time() {
        ChangedPack pack = ChangedPack.of("example").with(CURE, new RuleValue.NoDeadline());
        assertThat(clocks(pack, LocalDateTime.of(2026, 11, 4, 8, 0), null).ask(Ask.IDENTIFICATION))
                .isEqualTo(AskStatus.OVER);
    }

    @Test
    void counts_from_the_notice_and_needs_a_person_when_none_was_sent_by_the_day_of_decision() {
        ChangedPack pack = ChangedPack.of("example").with(CURE, daysAfter(DeadlineAnchor.NOTICE_SENT, 3));
        LocalDateTime sent = LocalDateTime.of(2026, 11, 5, 10, 0);

        assertThat(clocks(pack, LocalDateTime.of(2026, 11, 13, 17, 0), null).ask(Ask.IDENTIFICATION))
                .isEqualTo(AskStatus.RUNNING);
        assertThat(clocks(pack, LocalDateTime.of(2026, 11, 13, 17, 1), null).ask(Ask.IDENTIFICATION))
                .isEqualTo(AskStatus.OVER_WITHOUT_NOTICE);
        assertThat(clocks(pack, afterwards(), null).deadline(Ask.IDENTIFICATION))
                .isEmpty();
        assertThat(clocks(pack, afterwards(), sent).deadline(Ask.IDENTIFICATION))
                .hasValueSatisfying(due -> assertThat(due.day()).isEqualTo("2026-11-08"));
        assertThat(clocks(pack, LocalDateTime.of(2026, 11, 8, 17, 0), sent).ask(Ask.IDENTIFICATION))
                .isEqualTo(AskStatus.RUNNING);
        assertThat(clocks(pack, LocalDateTime.of(2026, 11, 8, 17, 1), sent).ask(Ask.IDENTIFICATION))
                .isEqualTo(AskStatus.OVER);
    }

    @Test
    void runs_to_the_boards_meeting_and_is_never_over_before_one_is_called() {
        ChangedPack pack = ChangedPack.of("example").with(CURE, atTheMeeting());
        LocalDateTime told = LocalDateTime.of(2026, 11, 5, 10, 0);
        LocalDateTime meeting = LocalDateTime.of(2026, 11, 12, 10, 0);

        assertThat(clocks(pack, afterwards(), told).ask(Ask.IDENTIFICATION)).isEqualTo(AskStatus.RUNNING);
        assertThat(clocks(pack, afterwards(), told).deadline(Ask.IDENTIFICATION))
                .isEmpty();
        assertThat(clocks(pack, afterwards(), told).waitsForTheMeeting(Ask.IDENTIFICATION))
                .isTrue();
        assertThat(called(pack, meeting, told, meeting).ask(Ask.IDENTIFICATION)).isEqualTo(AskStatus.RUNNING);
        assertThat(called(pack, meeting, told, meeting).deadline(Ask.IDENTIFICATION))
                .hasValueSatisfying(due -> assertThat(due.lastMoment()).isEqualTo(meeting));
        assertThat(called(pack, meeting.plusMinutes(1), told, meeting).ask(Ask.IDENTIFICATION))
                .isEqualTo(AskStatus.OVER);
        assertThat(called(pack, meeting, told, meeting).waitsForTheMeeting(Ask.IDENTIFICATION))
                .isFalse();
        assertThat(clocks(ChangedPack.of("example"), afterwards(), told).waitsForTheMeeting(Ask.IDENTIFICATION))
                .isFalse();
    }

    @Test
    void counts_from_election_day_whatever_day_the_notice_was_sent() {
        assertThat(clocks(ChangedPack.of("example"), afterwards(), LocalDateTime.of(2026, 11, 9, 9, 0))
                        .deadline(Ask.IDENTIFICATION))
                .hasValueSatisfying(due -> assertThat(due.day()).isEqualTo("2026-11-10"));
    }

    /** The example takes mail ballots until November 10 at 5 pm. */
    @ParameterizedTest
    @CsvSource({"2026-11-10T17:00, false", "2026-11-10T17:01, true"})
    void knows_when_mail_ballots_come_too_late(LocalDateTime asOf, boolean passed) {
        assertThat(clocks(ChangedPack.of("example"), asOf, null).mailReceiptPassed())
                .isEqualTo(passed);
    }

    @Test
    void never_calls_a_mail_ballot_late_where_the_law_sets_no_day_or_nobody_knows_it() {
        ChangedPack none = ChangedPack.of("example").with(Rules.MAIL_RECEIPT, new RuleValue.NoDeadline());
        ChangedPack unknown = ChangedPack.of("example").without(Rules.MAIL_RECEIPT);

        assertThat(clocks(none, afterwards(), null).mailReceiptPassed()).isFalse();
        assertThat(clocks(unknown, afterwards(), null).mailReceiptPassed()).isFalse();
    }

    private static LocalDateTime afterwards() {
        return LocalDateTime.of(2026, 12, 24, 12, 0);
    }

    private static RuleValue daysAfter(DeadlineAnchor anchor, int days) {
        return new RuleValue.Dated(new DeadlineRule(
                anchor, new DeadlineOffset.Days(days), TimeOfDay.parse("17:00").orElseThrow(), ClosedDayRule.SAME_DAY));
    }

    private static RuleValue atTheMeeting() {
        return new RuleValue.Dated(new DeadlineRule(
                DeadlineAnchor.BOARD_MEETING, new DeadlineOffset.Days(0), TimeOfDay.THAT_HOUR, ClosedDayRule.SAME_DAY));
    }

    private static ElectionClocks called(
            ChangedPack pack, LocalDateTime asOf, LocalDateTime noticeSent, LocalDateTime meeting) {
        return new ElectionClocks(
                pack.book().with(DeadlineAnchor.BOARD_MEETING, meeting), asOf, Map.of(Ask.IDENTIFICATION, noticeSent));
    }

    private static ElectionClocks clocks(ChangedPack pack, LocalDateTime asOf, LocalDateTime noticeSent) {
        Map<Ask, LocalDateTime> sent = noticeSent == null ? Map.of() : Map.of(Ask.IDENTIFICATION, noticeSent);
        return new ElectionClocks(pack.book(), asOf, sent);
    }
}
