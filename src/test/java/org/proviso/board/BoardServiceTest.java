package org.proviso.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.proviso.board.CasesReady.COUNT;
import static org.proviso.board.CasesReady.NOON;
import static org.proviso.board.CasesReady.as;
import static org.proviso.board.Sitting.done;
import static org.proviso.board.Sitting.refused;

import jakarta.validation.ConstraintViolationException;
import java.util.List;
import org.proviso.access.NotPermittedException;
import org.proviso.board.agenda.AgendaService;
import org.proviso.board.motion.MotionService;
import org.proviso.board.record.BoardReplay;
import org.proviso.board.record.Minutes;
import org.proviso.board.record.MinutesService;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.database.OfficeTime;
import org.proviso.database.OnADatabase;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.dao.OptimisticLockingFailureException;

/** Sessions of the deciding body and who is there. */
class BoardServiceTest {

    private static CallSession call(BodyKind body) {
        return new CallSession(new ElectionId(CasesReady.ID), body, NOON, "Room 2");
    }

    @OnADatabase
    void a_session_is_called_opened_attended_and_closed_and_the_ledger_tells(TestOffice office) {
        CasesReady.in(office);
        BoardService boards = office.the(BoardService.class);
        BoardSession called = as("eve", () -> done(boards.callSession(call(BodyKind.BOARD))));
        SessionKey key = called.key();
        assertThat(called.quorum()).isEqualTo(2);
        assertThat(refused(as("eve", () -> boards.recordArrival(key, new UserName("eve")))))
                .isEqualTo("not_in_this_state");
        BoardSession open = as("eve", () -> done(boards.open(key, called.version())));
        assertThat(open.isOpen()).isTrue();
        assertThatThrownBy(() -> as("eve", () -> boards.open(key, called.version())))
                .isInstanceOf(OptimisticLockingFailureException.class);
        assertThat(refused(as("eve", () -> boards.open(key, open.version())))).isEqualTo("not_in_this_state");
        as("eve", () -> done(boards.recordArrival(key, new UserName("fay"))));
        OfficeTime.set(office, NOON.plusHours(1));
        as("eve", () -> done(boards.recordDeparture(key, new UserName("fay"))));
        BoardSession closed = as("eve", () -> done(boards.close(key, open.version())));
        assertThat(closed.isOpen()).isFalse();
        assertThat(refused(as("eve", () -> boards.recordArrival(key, new UserName("eve")))))
                .isEqualTo("not_in_this_state");
        List<LedgerEntry> entries =
                office.the(LedgerService.class).read(LedgerChain.of(new ElectionId(CasesReady.ID)), 0, 1_000);
        assertThat(entries.subList(entries.size() - 5, entries.size()))
                .allMatch(entry -> entry.subject().equals("session-1"))
                .allMatch(entry -> !entry.line().contains("fay"))
                .extracting(LedgerEntry::act)
                .containsExactly("session_called", "session_opened", "member_arrived", "member_left", "session_closed");
    }

    @OnBothDatabases
    void a_session_closed_by_mistake_is_reopened_with_a_reason(TestOffice office) {
        CasesReady cases = CasesReady.in(office);
        BoardService boards = office.the(BoardService.class);
        Sitting sitting = Sitting.of(cases, "eve", "fay");
        SessionKey key = sitting.key();
        int open = as("eve", () -> boards.session(key)).version();
        assertThat(refused(as("eve", () -> boards.reopen(key, open, "It is open."))))
                .isEqualTo("not_in_this_state");
        BoardSession closed = as("eve", () -> done(boards.close(key, open)));
        assertThat(refused(as("eve", () -> boards.reopen(key, closed.version(), " "))))
                .isEqualTo("no_reason");
        assertThatThrownBy(() -> as("eve", () -> boards.reopen(key, open, "An old page.")))
                .isInstanceOf(OptimisticLockingFailureException.class);
        assertThatThrownBy(() -> as("carl", () -> boards.reopen(key, closed.version(), "No.")))
                .isInstanceOf(NotPermittedException.class);
        OfficeTime.set(office, NOON.plusMinutes(10));
        BoardSession again = as("eve", () -> done(boards.reopen(key, closed.version(), "Two envelopes were left.")));
        assertThat(again.isOpen()).isTrue();
        assertThat(refused(as("eve", () -> boards.recordDeparture(key, new UserName("fay")))))
                .as("everybody left when it was closed")
                .isEqualTo("not_present");
        as("eve", () -> done(boards.recordArrival(key, new UserName("fay"))));
        assertThat(as("eve", () -> office.the(MinutesService.class).minutes(key))
                        .reopenings())
                .extracting(Minutes.Reopened::by, Minutes.Reopened::because)
                .containsExactly(tuple("eve", "Two envelopes were left."));
        assertThat(as("ada", () -> office.the(MinutesService.class).minutes(key))
                        .reopenings())
                .as("what somebody wrote is for those who see whole cases")
                .extracting(Minutes.Reopened::because)
                .containsExactly("");
        assertThat(office.the(BoardReplay.class)
                        .replay(new ElectionId(CasesReady.ID))
                        .isWhole())
                .isTrue();
    }

    @OnBothDatabases
    void a_session_whose_envelopes_are_on_another_agenda_by_now_is_not_reopened(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        BoardService boards = office.the(BoardService.class);
        SessionKey first = Sitting.of(cases, "eve", "fay").put(COUNT).key();
        BoardSession closed =
                as("eve", () -> done(boards.close(first, boards.session(first).version())));
        SessionKey second = Sitting.of(cases, "gil").put(COUNT).key();
        assertThat(refused(as("eve", () -> boards.reopen(first, closed.version(), "Too early."))))
                .isEqualTo("P-1012 on_another_agenda");
        as("eve", () -> done(boards.close(second, boards.session(second).version())));
        as("eve", () -> done(boards.reopen(first, closed.version(), "Too early.")));
    }

    @OnADatabase
    void only_a_body_that_the_pack_lets_decide_is_called(TestOffice office) {
        CasesReady.in(office);
        BoardService boards = office.the(BoardService.class);
        ActResult<BoardSession> refused = as("eve", () -> boards.callSession(call(BodyKind.FIRST)));
        assertThat(refused(refused)).isEqualTo("no_such_body");
        assertThat(refused.refusals().get(0).words())
                .isEqualTo("The rule pack gives decisions to the board, not to the first body.");
        assertThat(as("eve", () -> boards.sessions(new ElectionId(CasesReady.ID))))
                .isEmpty();
        assertThatThrownBy(() -> as("eve", () -> boards.callSession(new CallSession(null, BodyKind.BOARD, NOON, ""))))
                .isInstanceOf(ConstraintViolationException.class);
    }

    @OnADatabase
    void a_member_is_a_decider_with_a_seat_left_and_in_one_session_at_a_time(TestOffice office) {
        CasesReady cases = CasesReady.in(office);
        BoardService boards = office.the(BoardService.class);
        SessionKey first = Sitting.of(cases, "eve", "fay").key();
        assertThat(refused(as("eve", () -> boards.recordArrival(first, new UserName("ada")))))
                .isEqualTo("no_member");
        assertThat(refused(as("eve", () -> boards.recordArrival(first, new UserName("nobody")))))
                .isEqualTo("no_member");
        assertThat(refused(as("eve", () -> boards.recordArrival(first, new UserName("eve")))))
                .isEqualTo("already_present");
        SessionKey second = Sitting.of(cases, "gil").key();
        assertThat(refused(as("eve", () -> boards.recordArrival(second, new UserName("eve")))))
                .isEqualTo("already_present");
        as("eve", () -> done(boards.recordArrival(first, new UserName("hal"))));
        assertThat(refused(as("eve", () -> boards.recordArrival(first, new UserName("ivy")))))
                .isEqualTo("more_present_than_members");
        OfficeTime.set(office, NOON.plusMinutes(5));
        as("eve", () -> done(boards.recordDeparture(first, new UserName("hal"))));
        assertThat(refused(as("eve", () -> boards.recordDeparture(first, new UserName("hal")))))
                .isEqualTo("not_present");
        as("eve", () -> done(boards.recordArrival(first, new UserName("ivy"))));
        OfficeTime.set(office, NOON.plusMinutes(9));
        as("eve", () -> done(boards.recordDeparture(first, new UserName("ivy"))));
        as("eve", () -> done(boards.recordArrival(first, new UserName("hal"))));
        assertThat(as("eve", () -> boards.members(first)))
                .extracting(SessionMember::userName)
                .extracting(UserName::value)
                .containsExactly("eve", "fay", "hal", "ivy", "hal");
    }

    @OnADatabase
    void a_session_does_not_close_over_a_motion_and_whoever_is_there_leaves_with_it(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        BoardService boards = office.the(BoardService.class);
        Sitting board = Sitting.of(cases, "eve", "fay").put(COUNT);
        BoardMotion motion = done(board.move(MotionKind.COUNT, COUNT));
        assertThat(refused(as("eve", () -> boards.close(board.key(), 1)))).isEqualTo("motion_pending");
        as("eve", () -> done(board.motions().withdraw(motion.key(), motion.version())));
        as("eve", () -> done(boards.close(board.key(), 1)));
        assertThat(as("eve", () -> boards.members(board.key()))).allMatch(member -> member.leftAt() != null);
        assertThat(Sitting.of(cases, "eve", "fay").key().sessionNo()).isEqualTo(2);
    }

    @OnADatabase
    void a_member_is_recused_once_from_an_envelope_of_the_agenda(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        BoardService boards = office.the(BoardService.class);
        Sitting board = Sitting.of(cases, "eve", "fay").put(COUNT);
        RecordRecusal fay =
                new RecordRecusal(board.key(), new EnvelopeNumber("P-1012"), new UserName("fay"), "My brother.");
        as("eve", () -> done(boards.recuse(fay)));
        assertThat(refused(as("eve", () -> boards.recuse(fay)))).isEqualTo("not_in_this_state");
        assertThat(refused(as(
                        "eve",
                        () -> boards.recuse(new RecordRecusal(
                                board.key(), new EnvelopeNumber("P-1050"), new UserName("fay"), "My neighbor.")))))
                .isEqualTo("not_on_the_agenda");
        assertThat(refused(as(
                        "eve",
                        () -> boards.recuse(new RecordRecusal(
                                board.key(), new EnvelopeNumber("P-1012"), new UserName("gil"), "My cousin.")))))
                .isEqualTo("not_present");
        assertThat(as("eve", () -> boards.recusals(board.key()))).hasSize(1);
    }

    @OnADatabase
    void nobody_but_deciders_acts_in_a_session(TestOffice office) {
        CasesReady.in(office);
        BoardService boards = office.the(BoardService.class);
        SessionKey key = new SessionKey(new ElectionId(CasesReady.ID), 1);
        for (String other : List.of("ada", "hugh")) {
            assertThatThrownBy(() -> as(other, () -> boards.callSession(call(BodyKind.BOARD))))
                    .isInstanceOf(NotPermittedException.class);
            assertThatThrownBy(() -> as(other, () -> boards.open(key, 0))).isInstanceOf(NotPermittedException.class);
            assertThatThrownBy(() -> as(other, () -> boards.recordArrival(key, new UserName("eve"))))
                    .isInstanceOf(NotPermittedException.class);
            assertThatThrownBy(() -> as(other, () -> boards.recordDeparture(key, new UserName("eve"))))
                    .isInstanceOf(NotPermittedException.class);
            assertThatThrownBy(() -> as(other, () -> boards.close(key, 0))).isInstanceOf(NotPermittedException.class);
            assertThatThrownBy(() -> as(other, () -> boards.members(key))).isInstanceOf(NotPermittedException.class);
            assertThatThrownBy(() ->
                            as(other, () -> office.the(AgendaService.class).addToAgenda(key, COUNT)))
                    .isInstanceOf(NotPermittedException.class);
            assertThatThrownBy(() ->
                            as(other, () -> office.the(AgendaService.class).agenda(key)))
                    .isInstanceOf(NotPermittedException.class);
            assertThatThrownBy(() ->
                            as(other, () -> office.the(MotionService.class).close(new MotionKey(key, 1), 0)))
                    .isInstanceOf(NotPermittedException.class);
        }
        assertThatThrownBy(() -> as("eve", () -> boards.open(key, 0))).isInstanceOf(IllegalArgumentException.class);
    }
}
