package org.proviso.board.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.board.CasesReady.COUNT;
import static org.proviso.board.CasesReady.as;
import static org.proviso.board.Sitting.done;
import static org.proviso.board.Sitting.refused;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.access.NotPermittedException;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.access.UserService;
import org.proviso.board.BoardMotion;
import org.proviso.board.BoardService;
import org.proviso.board.CasesReady;
import org.proviso.board.MotionKind;
import org.proviso.board.MoveMotion;
import org.proviso.board.Sitting;
import org.proviso.board.record.BoardReplay;
import org.proviso.board.record.Minutes;
import org.proviso.board.record.MinutesService;
import org.proviso.board.record.SessionDetails;
import org.proviso.board.record.SessionDetailsService;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.deciding.Vote;
import org.proviso.database.OnADatabase;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;

/** A secretary keeps the record of a session and has no vote in it. */
class RecordKeepingServiceTest {

    private static final UserName EVE = new UserName("eve");
    private static final UserName FAY = new UserName("fay");
    private static final UserName SAM = new UserName("sam");

    /** Eve and Fay sit in a session with three envelopes to count; Sam is hired as a secretary. */
    private static Sitting sitting(TestOffice office) {
        Sitting board =
                Sitting.of(CasesReady.in(office).toCount(COUNT), "eve", "fay").put(COUNT);
        Staff.hire(office, "sam", Role.SECRETARY);
        return board;
    }

    private static RecordKeepingService records(TestOffice office) {
        return office.the(RecordKeepingService.class);
    }

    private static MoveMotion toCount(Sitting board) {
        Map<EnvelopeNumber, Integer> seen = new LinkedHashMap<>();
        COUNT.forEach(envelope -> seen.put(envelope, board.cases().version(envelope)));
        return new MoveMotion(board.key(), MotionKind.COUNT, seen, Set.of(), List.of(), "", "");
    }

    @OnBothDatabases
    void a_secretary_records_who_came_what_was_moved_and_seconded_and_each_vote_and_a_member_closes_it(
            TestOffice office) {
        Sitting board = sitting(office);
        BoardService boards = office.the(BoardService.class);
        MotionService motions = office.the(MotionService.class);
        as("sam", () -> done(records(office).keepRecord(board.key())));
        as("sam", () -> done(boards.recordArrival(board.key(), new UserName("gil"))));
        BoardMotion moved = as("sam", () -> done(records(office).move(toCount(board), EVE)));
        BoardMotion seconded = as("sam", () -> done(records(office).second(moved.key(), moved.version(), FAY)));
        as("sam", () -> done(motions.putToVote(moved.key(), seconded.version())));
        for (String member : List.of("eve", "fay", "gil")) {
            as("sam", () -> done(motions.vote(new CastVote(moved.key(), new UserName(member), Vote.YES))));
        }
        int version = board.motion(moved.key()).version();
        assertThatThrownBy(() -> as("sam", () -> motions.close(moved.key(), version)))
                .as("what decides is a member's act")
                .isInstanceOf(NotPermittedException.class);
        as("eve", () -> done(motions.close(moved.key(), version)));
        assertThat(office.the(CaseService.class).inState(new ElectionId(CasesReady.ID), CaseState.DECIDED))
                .hasSize(COUNT.size());
        Minutes minutes = as("sam", () -> office.the(MinutesService.class).minutes(board.key()));
        assertThat(minutes.keepers()).extracting(Minutes.Keeper::name).containsExactly("sam");
        assertThat(minutes.motions().get(0))
                .returns("eve", Minutes.MotionEntry::movedBy)
                .returns("sam", Minutes.MotionEntry::recordedBy)
                .returns("fay", Minutes.MotionEntry::secondedBy)
                .returns("sam", Minutes.MotionEntry::secondRecordedBy);
        assertThat(minutes.motions().get(0).votes())
                .extracting(Minutes.VoteEntry::recordedBy)
                .containsOnly("sam");
        assertThat(office.the(BoardReplay.class)
                        .replay(new ElectionId(CasesReady.ID))
                        .first())
                .as("tables and ledger say the same of it")
                .isEmpty();
    }

    @OnADatabase
    void a_secretary_records_nothing_of_a_session_whose_record_somebody_else_keeps(TestOffice office) {
        Sitting board = sitting(office);
        assertThat(refused(as(
                        "sam", () -> office.the(BoardService.class).recordArrival(board.key(), new UserName("gil")))))
                .isEqualTo("not_present");
        assertThat(refused(as("sam", () -> records(office).move(toCount(board), EVE))))
                .isEqualTo("not_present");
    }

    @OnADatabase
    void whoever_keeps_the_record_has_no_vote_in_the_session_whatever_role_they_are_given(TestOffice office) {
        Sitting board = sitting(office);
        as("sam", () -> done(records(office).keepRecord(board.key())));
        assertThat(refused(as("eve", () -> office.the(BoardService.class).recordArrival(board.key(), SAM))))
                .isEqualTo("no_member");
        Staff.hire(office, "joan", Role.ADMINISTRATOR);
        as("joan", () -> done(office.the(UserService.class).changeRoles(SAM, 0, Set.of(Role.DECIDER))));
        assertThat(refused(as("eve", () -> office.the(BoardService.class).recordArrival(board.key(), SAM))))
                .as("a decider by now, but not in this session")
                .isEqualTo("no_member");
    }

    @OnADatabase
    void whoever_sat_in_the_session_does_not_keep_its_record_and_votes_no_more_as_a_secretary(TestOffice office) {
        Sitting board = sitting(office);
        assertThat(refused(as("eve", () -> records(office).keepRecord(board.key()))))
                .isEqualTo("no_member");
        Staff.hire(office, "joan", Role.ADMINISTRATOR);
        as("joan", () -> done(office.the(UserService.class).changeRoles(FAY, 0, Set.of(Role.SECRETARY))));
        assertThat(refused(as("fay", () -> records(office).keepRecord(board.key()))))
                .isEqualTo("already_present");
        BoardMotion moved = done(board.move(MotionKind.COUNT, COUNT));
        as("eve", () -> done(office.the(MotionService.class).putToVote(moved.key(), moved.version())));
        assertThat(refused(as(
                        "eve", () -> office.the(MotionService.class).vote(new CastVote(moved.key(), FAY, Vote.YES)))))
                .isEqualTo("no_member");
    }

    @OnADatabase
    void a_motion_is_a_members_who_is_there_and_another_one_seconds_it(TestOffice office) {
        Sitting board = sitting(office);
        as("sam", () -> done(records(office).keepRecord(board.key())));
        assertThat(refused(as("sam", () -> records(office).move(toCount(board), new UserName("gil")))))
                .isEqualTo("not_present");
        assertThat(refused(as("sam", () -> records(office).move(toCount(board), SAM))))
                .isEqualTo("not_present");
        BoardMotion moved = as("sam", () -> done(records(office).move(toCount(board), EVE)));
        assertThat(refused(as("sam", () -> records(office).second(moved.key(), moved.version(), EVE))))
                .isEqualTo("own_act");
        assertThat(refused(as("sam", () -> records(office).keepRecord(board.key()))))
                .as("twice")
                .isEqualTo("not_in_this_state");
    }

    @OnADatabase
    void a_secretary_reads_numbers_and_reasons_and_nothing_written_about_a_voter(TestOffice office) {
        Sitting board = sitting(office);
        done(board.move(MotionKind.TABLE, COUNT.get(0), "The voter comes tomorrow."));
        SessionDetails seen =
                as("sam", () -> office.the(SessionDetailsService.class).details(board.key()));
        assertThat(seen.toString()).contains(COUNT.get(0).value()).doesNotContain("comes tomorrow");
        assertThat(as("eve", () -> office.the(SessionDetailsService.class).details(board.key()))
                        .toString())
                .contains("comes tomorrow");
    }
}
