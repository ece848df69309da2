package org.proviso.notices;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.as;

import java.time.LocalDateTime;
import java.util.List;
import org.proviso.board.BoardService;
import org.proviso.board.BoardSession;
import org.proviso.board.BodyKind;
import org.proviso.board.CallSession;
import org.proviso.board.MoveSession;
import org.proviso.board.SessionKey;
import org.proviso.board.record.BoardReplay;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.judging.DueAsk;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Rule;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.election.RulesService;
import org.proviso.election.rules.RulesInForceService;
import org.proviso.intake.IntakeService;
import org.proviso.intake.RecordCure;
import org.proviso.intake.cure.CureService;
import org.proviso.journey.Primary;
import org.proviso.notices.NoticeSlipService.TakeBackAttempt;
import org.proviso.notices.told.ToldDate;
import org.proviso.notices.told.ToldDateService;
import org.proviso.review.news.DeadlineService;
import org.proviso.review.replay.AssessmentReplay;
import org.proviso.status.LookupResult;
import org.proviso.status.StatusService;

/**
 * Under a ruling as in the packs of Kansas and Utah: identification may be brought until the board meets, and no notice is
 * required. The voters showed none when they voted; all else of their cases is reviewed and in order.
 */
class CureUntilTheMeetingTest {

    private static final ElectionId ELECTION = new ElectionId(Primary.ID);
    private static final EnvelopeKey FIRST = NoticeOffice.key(new EnvelopeNumber("P-1009"));
    private static final EnvelopeKey SECOND = NoticeOffice.key(new EnvelopeNumber("P-1016"));
    private static final LocalDateTime MEETING = LocalDateTime.of(2026, 8, 12, 10, 0);
    private static final LocalDateTime EARLIER = LocalDateTime.of(2026, 8, 10, 9, 30);

    @OnBothDatabases
    void nobody_is_too_late_before_a_meeting_is_called_and_then_all_say_the_same_date(TestOffice services) {
        NoticeOffice office = ruled(services);
        office.primary().reviewing(FIRST).work();
        office.logged("jon", office.ask(FIRST, Ask.IDENTIFICATION), NoticeOffice.NOON);
        office.at(LocalDateTime.of(2026, 9, 30, 12, 0));
        passed(office);
        assertThat(says(office, FIRST)).isEqualTo(Recommendation.WAIT_FOR_THE_VOTER);
        assertThat(due(office, FIRST).deadline()).isEmpty();
        assertThat(due(office, FIRST).untilTheMeeting()).isTrue();
        assertThat(office.letter(office.ask(FIRST, Ask.IDENTIFICATION)))
                .contains("it must reach us before the board meets. The date is not set yet.")
                .contains("Call us before you come: ");
        assertThat(lookUp(office, FIRST).untilTheMeeting()).contains(Ask.IDENTIFICATION);
        assertThat(onTheCalendar(office)).isNull();

        office.at(NoticeOffice.NOON);
        call(office, MEETING);
        assertThat(untilOnTheCase(office, FIRST)).isEqualTo(MEETING);
        assertThat(office.letter(office.ask(FIRST, Ask.IDENTIFICATION)))
                .contains("it must reach us by Wednesday, August 12, 2026, at 10:00 am. The board meets then.");
        assertThat(lookUp(office, FIRST).untilTheMeeting()).isEmpty();
        assertThat(lookUp(office, FIRST).asks())
                .filteredOn(ask -> ask.ask() == Ask.IDENTIFICATION)
                .singleElement()
                .satisfies(ask -> assertThat(ask.until()).isEqualTo(MEETING));
        assertThat(onTheCalendar(office)).isEqualTo(MEETING);
        office.at(MEETING.plusMinutes(1));
        passed(office);
        assertThat(says(office, FIRST)).isEqualTo(Recommendation.REJECT);
        assertThat(office.primary()
                        .office()
                        .the(AssessmentReplay.class)
                        .replay(ELECTION)
                        .differing())
                .isZero();
    }

    @OnBothDatabases
    void what_comes_before_a_meeting_is_called_is_in_time(TestOffice services) {
        NoticeOffice office = ruled(services);
        office.primary().reviewing(FIRST).work();
        LocalDateTime stamp = LocalDateTime.of(2026, 8, 5, 11, 0);
        as(
                "jon",
                () -> accepted(office.primary()
                        .office()
                        .the(CureService.class)
                        .record(new RecordCure(
                                ELECTION, FIRST.envelopeNo(), Ask.IDENTIFICATION, stamp, "A driver's license."))));
        assertThat(says(office, FIRST)).isEqualTo(Recommendation.COUNT);
    }

    @OnBothDatabases
    void the_meeting_moves_the_deadline_and_who_was_told_another_date_is_named(TestOffice services) {
        NoticeOffice office = ruled(services);
        for (EnvelopeKey key : List.of(FIRST, SECOND)) {
            office.primary().reviewing(key).work();
        }
        BoardSession session = call(office, MEETING);
        office.logged("jon", office.ask(FIRST, Ask.IDENTIFICATION), NoticeOffice.NOON);
        assertThat(told(office)).isEmpty();

        BoardSession moved = move(office, session, EARLIER);
        assertThat(untilOnTheCase(office, FIRST)).isEqualTo(EARLIER);
        assertThat(told(office))
                .extracting(ToldDate::key, ToldDate::told, ToldDate::meeting, ToldDate::isLaterThanTheMeeting)
                .containsExactly(tuple(FIRST, MEETING, EARLIER, true));
        office.logged("jon", office.ask(FIRST, Ask.IDENTIFICATION), NoticeOffice.NOON);
        assertThat(told(office)).as("told again, with the new date").isEmpty();
        move(office, moved, MEETING.plusDays(1));
        assertThat(told(office))
                .extracting(ToldDate::key, ToldDate::isLaterThanTheMeeting)
                .containsExactly(tuple(FIRST, false));
        Notice told = office.ask(FIRST, Ask.IDENTIFICATION);
        as(
                "jon",
                () -> accepted(office.primary()
                        .office()
                        .the(NoticeSlipService.class)
                        .takeBackSent(new TakeBackAttempt(
                                FIRST, told.number(), told.version(), 2, "It was another letter."))));
        assertThat(told(office))
                .as("a letter that was never sent told nobody a date")
                .extracting(ToldDate::key, ToldDate::told)
                .containsExactly(tuple(FIRST, MEETING));
        assertThat(office.primary()
                        .office()
                        .the(BoardReplay.class)
                        .replay(ELECTION)
                        .differing())
                .isZero();
    }

    @OnBothDatabases
    void a_session_that_closes_gives_the_time_until_the_next_one(TestOffice services) {
        NoticeOffice office = ruled(services);
        office.primary().reviewing(FIRST).work();
        BoardSession first = call(office, EARLIER);
        call(office, MEETING);
        assertThat(untilOnTheCase(office, FIRST)).isEqualTo(EARLIER);
        office.at(EARLIER.plusMinutes(1));
        passed(office);
        assertThat(says(office, FIRST)).isEqualTo(Recommendation.REJECT);
        BoardService boards = office.primary().office().the(BoardService.class);
        BoardSession open = as("eve", () -> accepted(boards.open(first.key(), first.version())));
        as("eve", () -> accepted(boards.close(open.key(), open.version())));
        assertThat(says(office, FIRST)).isEqualTo(Recommendation.WAIT_FOR_THE_VOTER);
        assertThat(untilOnTheCase(office, FIRST)).isEqualTo(MEETING);
        office.at(MEETING.plusMinutes(1));
        passed(office);
        assertThat(says(office, FIRST)).as("it passes again").isEqualTo(Recommendation.REJECT);
    }

    @OnBothDatabases
    void an_official_who_sits_down_to_decide_ends_nobodys_time(TestOffice services) {
        NoticeOffice office = ruled(services);
        ruling(services, "decider.kind", "official");
        office.primary().reviewing(FIRST).work();
        BoardService boards = office.primary().office().the(BoardService.class);
        CallSession now = new CallSession(ELECTION, BodyKind.OFFICIAL, NoticeOffice.NOON, "Office");
        as("eve", () -> accepted(boards.sitAtOnce(now)));
        assertThat(due(office, FIRST).deadline()).isEmpty();
        as("eve", () -> accepted(boards.callSession(new CallSession(ELECTION, BodyKind.OFFICIAL, MEETING, "Office"))));
        assertThat(untilOnTheCase(office, FIRST)).isEqualTo(MEETING);
    }

    private static NoticeOffice ruled(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        ruling(services, "notice_required.identification", "no");
        ruling(services, "cure.identification", "{on: board_meeting, time: that_hour, if_closed: same_day}");
        return office;
    }

    private static void ruling(TestOffice services, String rule, String value) {
        services.jdbc()
                .sql("insert into county_ruling values (?, ?, ?, 'A. Reyes', ?, 'letter of counsel')")
                .params(Primary.ID, rule, value, NoticeOffice.NOON.toLocalDate())
                .update();
        services.inTransaction(() -> services.the(RulesService.class).keep(ELECTION));
    }

    private static BoardSession call(NoticeOffice office, LocalDateTime at) {
        return as(
                "eve",
                () -> accepted(office.primary()
                        .office()
                        .the(BoardService.class)
                        .callSession(new CallSession(ELECTION, BodyKind.BOARD, at, "Courthouse"))));
    }

    private static BoardSession move(NoticeOffice office, BoardSession session, LocalDateTime at) {
        SessionKey key = session.key();
        return as(
                "eve",
                () -> accepted(office.primary()
                        .office()
                        .the(BoardService.class)
                        .moveSession(new MoveSession(key, session.version(), at, "Courthouse"))));
    }

    private static List<ToldDate> told(NoticeOffice office) {
        return as(
                "carl",
                () -> office.primary().office().the(ToldDateService.class).toldAnotherDate(ELECTION));
    }

    private static void passed(NoticeOffice office) {
        office.primary().office().the(DeadlineService.class).recordPassedDeadlines(ELECTION);
    }

    private static Recommendation says(NoticeOffice office, EnvelopeKey key) {
        return office.primary().reviewing(key).report().recommendation();
    }

    private static DueAsk due(NoticeOffice office, EnvelopeKey key) {
        return office.primary().reviewing(key).report().asks().stream()
                .filter(ask -> ask.ask() == Ask.IDENTIFICATION)
                .findFirst()
                .orElseThrow();
    }

    private static LocalDateTime untilOnTheCase(NoticeOffice office, EnvelopeKey key) {
        return due(office, key).deadline().map(Deadline::lastMoment).orElseThrow();
    }

    private static LocalDateTime onTheCalendar(NoticeOffice office) {
        return as(
                "carl",
                () -> office.primary()
                        .office()
                        .the(RulesInForceService.class)
                        .book(ELECTION)
                        .of(Rule.cure(Ask.IDENTIFICATION))
                        .map(Deadline::lastMoment)
                        .orElse(null));
    }

    private static LookupResult.Found lookUp(NoticeOffice office, EnvelopeKey key) {
        Envelope envelope = office.primary()
                .office()
                .the(IntakeService.class)
                .envelope(ELECTION, key.envelopeNo())
                .orElseThrow();
        return (LookupResult.Found) office.primary()
                .office()
                .the(StatusService.class)
                .lookUp(envelope.receiptNo(), envelope.affirmation().birthDate());
    }
}
