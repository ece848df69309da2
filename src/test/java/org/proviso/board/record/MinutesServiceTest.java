package org.proviso.board.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.board.CasesReady.COUNT;
import static org.proviso.board.CasesReady.NOON;
import static org.proviso.board.CasesReady.as;
import static org.proviso.board.Sitting.done;

import java.util.List;
import org.proviso.board.BoardService;
import org.proviso.board.BodyKind;
import org.proviso.board.CallSession;
import org.proviso.board.CasesReady;
import org.proviso.board.MotionKind;
import org.proviso.board.RecordRecusal;
import org.proviso.board.SessionKey;
import org.proviso.board.Sitting;
import org.proviso.board.agenda.AgendaService;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.deciding.Vote;
import org.proviso.database.OfficeTime;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.decide.DecidedCaseService;

/** The record of a session. */
class MinutesServiceTest {

    @OnADatabase
    void has_who_was_there_who_stood_aside_what_was_moved_and_how_each_voted(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay", "gil").put(COUNT);
        BoardService boards = office.the(BoardService.class);
        as(
                "gil",
                () -> done(
                        office.the(AgendaService.class).removeFromGroup(board.key(), new EnvelopeNumber("P-1049"), 0)));
        as(
                "eve",
                () -> done(boards.recuse(new RecordRecusal(
                        board.key(), new EnvelopeNumber("P-1042"), new UserName("gil"), "My brother."))));
        board.closed(
                board.move(MotionKind.COUNT, List.of(new EnvelopeNumber("P-1012"), new EnvelopeNumber("P-1042"))),
                "yes no -");
        board.closed(
                board.move(MotionKind.TABLE, new EnvelopeNumber("P-1049"), "The voter comes tomorrow."), "yes yes yes");
        OfficeTime.set(office, NOON.plusMinutes(50));
        as("eve", () -> done(boards.close(board.key(), 1)));
        Minutes minutes = as("fay", () -> office.the(MinutesService.class).minutes(board.key()));
        assertThat(minutes)
                .returns("Tamarack County Primary", Minutes::election)
                .returns(NOON, Minutes::openedAt)
                .returns(NOON.plusMinutes(50), Minutes::closedAt)
                .returns(3, Minutes::members)
                .returns(2, Minutes::quorum)
                .returns(
                        office.the(LedgerService.class).head(LedgerChain.of(new ElectionId(CasesReady.ID))),
                        Minutes::ledger);
        assertThat(minutes.attendance())
                .containsExactly(
                        new Minutes.Attendance("eve", NOON, NOON.plusMinutes(50)),
                        new Minutes.Attendance("fay", NOON, NOON.plusMinutes(50)),
                        new Minutes.Attendance("gil", NOON, NOON.plusMinutes(50)));
        assertThat(minutes.recusals())
                .containsExactly(new Minutes.RecusedMember("gil", new EnvelopeNumber("P-1042"), "My brother.", NOON));
        assertThat(minutes.pulledOut())
                .containsExactly(new Minutes.RemovedFromGroup(new EnvelopeNumber("P-1049"), "gil"));
        assertThat(minutes.motions().get(0))
                .returns(
                        List.of(new EnvelopeNumber("P-1012"), new EnvelopeNumber("P-1042")),
                        Minutes.MotionEntry::envelopes)
                .returns("eve", Minutes.MotionEntry::movedBy)
                .returns("The motion to count was tied, 1 to 1: count.", Minutes.MotionEntry::result)
                .returns(
                        List.of(
                                new Minutes.VoteEntry("eve", Vote.YES, "", null),
                                new Minutes.VoteEntry("fay", Vote.NO, "eve", null),
                                new Minutes.VoteEntry("gil", Vote.RECUSED, "", null)),
                        Minutes.MotionEntry::votes);
        assertThat(minutes.motions().get(1).because()).isEqualTo("The voter comes tomorrow.");
    }

    @OnADatabase
    void what_was_written_about_a_voter_is_for_those_who_may_see_whole_cases(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay").put(COUNT);
        BoardService boards = office.the(BoardService.class);
        as(
                "eve",
                () -> done(boards.recuse(new RecordRecusal(
                        board.key(), new EnvelopeNumber("P-1042"), new UserName("fay"), "My brother."))));
        done(board.move(MotionKind.TABLE, new EnvelopeNumber("P-1012"), "The voter comes tomorrow."));
        Minutes minutes = as("hugh", () -> office.the(MinutesService.class).minutes(board.key()));
        assertThat(minutes.recusals().get(0).ground()).isEmpty();
        assertThat(minutes.motions().get(0).because()).isEmpty();
        assertThat(minutes.motions().get(0).result()).isEmpty();
        assertThat(minutes.closedAt()).isNull();
    }

    @OnADatabase
    void names_what_a_member_sent_back_while_the_session_was_open_and_nothing_sent_back_besides(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        BoardService boards = office.the(BoardService.class);
        CallSession call = new CallSession(new ElectionId(CasesReady.ID), BodyKind.BOARD, NOON, "Room 2");
        SessionKey key = as("eve", () -> done(boards.callSession(call))).key();
        as("eve", () -> done(office.the(AgendaService.class).addToAgenda(key, COUNT)));
        OfficeTime.set(office, NOON.minusMinutes(20));
        sendBack(cases, "eve", "P-1049", "Before the session.");
        OfficeTime.set(office, NOON);
        as("eve", () -> done(boards.open(key, 0)));
        as("eve", () -> done(boards.recordArrival(key, new UserName("eve"))));
        OfficeTime.set(office, NOON.plusMinutes(10));
        sendBack(cases, "eve", COUNT.get(0).value(), "Look at the date again.");
        OfficeTime.set(office, NOON.plusMinutes(50));
        as("eve", () -> done(boards.close(key, 1)));
        OfficeTime.set(office, NOON.plusMinutes(60));
        sendBack(cases, "eve", COUNT.get(1).value(), "After the session.");
        assertThat(as("fay", () -> office.the(MinutesService.class).minutes(key))
                        .sentBack())
                .containsExactly(
                        new Minutes.SentBack(COUNT.get(0), "eve", NOON.plusMinutes(10), "Look at the date again."));
        assertThat(as("hugh", () -> office.the(MinutesService.class).minutes(key))
                        .sentBack())
                .as("without the note for those who may not see whole cases")
                .extracting(Minutes.SentBack::note)
                .containsExactly("");
    }

    private static void sendBack(CasesReady cases, String by, String envelope, String note) {
        EnvelopeNumber number = new EnvelopeNumber(envelope);
        as(
                by,
                () -> done(cases.office()
                        .the(DecidedCaseService.class)
                        .sendBack(
                                new EnvelopeKey(new ElectionId(CasesReady.ID), number), cases.version(number), note)));
    }
}
