package org.proviso.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;
import static org.proviso.journey.PageDriver.fill;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.said;

import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.board.BoardMotion;
import org.proviso.board.BoardService;
import org.proviso.board.BoardSession;
import org.proviso.board.BodyKind;
import org.proviso.board.CallSession;
import org.proviso.board.MotionKind;
import org.proviso.board.SessionKey;
import org.proviso.board.agenda.AgendaService;
import org.proviso.board.motion.MotionService;
import org.proviso.board.record.SessionDetails.Member;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.deciding.Vote;
import org.springframework.beans.factory.annotation.Autowired;

/** A secretary keeps the record of a session: RecordView with RecordMotionSheet and RecordVoteSheet. */
@OnPages
class RecordPageTest {

    /** An envelope of the sample that no other test of this server works on. */
    private static final String ENVELOPE = "P-1059";

    @Autowired
    private PageDriver pages;

    private static SessionKey sitting(EnvelopeKey key) {
        for (String member : List.of("ned", "oda")) {
            Staff.hire(PagesOffice.primary().office().services(), member, Role.DECIDER);
        }
        Staff.hire(PagesOffice.primary().office().services(), "pia", Role.SECRETARY);
        BoardService board = PagesOffice.the(BoardService.class);
        BoardSession called = PagesOffice.done(
                "ned",
                () -> board.callSession(new CallSession(
                        PagesOffice.ELECTION, BodyKind.BOARD, LocalDateTime.of(2026, 8, 6, 12, 0), "Annex")));
        PagesOffice.done("ned", () -> board.open(called.key(), called.version()));
        PagesOffice.done("ned", () -> board.recordArrival(called.key(), new UserName("ned")));
        PagesOffice.done(
                "ned", () -> PagesOffice.the(AgendaService.class).addToAgenda(called.key(), List.of(key.envelopeNo())));
        return called.key();
    }

    @Test
    void a_secretary_records_a_motion_its_second_and_the_votes_and_has_none() {
        EnvelopeKey key = PagesOffice.worked(ENVELOPE);
        SessionKey session = sitting(key);
        PagesOffice.done("ned", () -> PagesOffice.the(BoardService.class).recordArrival(session, new UserName("oda")));
        String voter =
                PagesOffice.file(key).report().envelope().affirmation().name().last();
        pages.on("board/record/" + session.sessionNo(), "pia", () -> {
            assertThat(said()).contains(ENVELOPE).doesNotContain(voter, "Record a motion", "Record my arrival");
            press("Keep the record of this session");
            assertThat(said()).contains("You keep its record. You have no vote.", "Record kept by pia, no vote.");
            press("Record a motion");
            fill("Moved by", new Member(new UserName("oda"), "oda"));
            press("Record motion");
            assertThat(said()).contains("Motion on the floor: count 1 envelope", "Moved by oda");
            fill("Seconded by", new Member(new UserName("ned"), "ned"));
            assertThat(said()).contains("seconded by ned");
            press("Open the vote");
            press("Record a member's vote");
            fill("Member", new Member(new UserName("oda"), "oda"));
            fill("Vote, as the member says it", Vote.YES);
            press("Record vote");
            assertThat(said()).contains("Voted: oda.").doesNotContain("Close the vote", "How do you vote");
        });
        BoardMotion motion = as(
                        "ned", () -> PagesOffice.the(MotionService.class).motions(session))
                .get(0);
        assertThat(motion)
                .returns(MotionKind.COUNT, BoardMotion::kind)
                .returns(new UserName("oda"), BoardMotion::movedBy)
                .returns(new UserName("pia"), BoardMotion::recordedBy)
                .returns(new UserName("ned"), BoardMotion::secondedBy);
        pages.on("board", "pia", () -> assertThat(said()).contains("Session " + session.sessionNo()));
    }
}
