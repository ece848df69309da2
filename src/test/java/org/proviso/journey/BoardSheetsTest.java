package org.proviso.journey;

import static com.github.mvysny.kaributesting.v10.LocatorJ._get;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.proviso.journey.Office.as;
import static org.proviso.journey.PageDriver.fill;
import static org.proviso.journey.PageDriver.marked;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.said;

import com.vaadin.flow.component.datetimepicker.DateTimePicker;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.board.BoardService;
import org.proviso.board.BoardSession;
import org.proviso.board.BodyKind;
import org.proviso.board.CallSession;
import org.proviso.board.MotionKey;
import org.proviso.board.MotionKind;
import org.proviso.board.SessionKey;
import org.proviso.board.agenda.AgendaService;
import org.proviso.board.motion.MotionService;
import org.proviso.board.record.SessionDetails.RecusedMember;
import org.proviso.board.record.SessionDetailsService;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.deciding.Vote;
import org.proviso.review.CaseState;
import org.proviso.review.acts.ProposalService;
import org.springframework.beans.factory.annotation.Autowired;

/** What a member of the board enters: CallSessionSheet, MoveSessionSheet, MotionSheet, ReasonSheet, RecordVoteSheet. */
@OnPages
class BoardSheetsTest {

    /** An envelope of the sample that no other test of this server works on. */
    private static final String FIVE_CLICKS = "P-1051";

    @Autowired
    private PageDriver pages;

    @Test
    void a_session_is_called_for_a_date_and_time() {
        pages.on("board", "eve", () -> {
            press("Call a session");
            DateTimePicker when = _get(DateTimePicker.class);
            when.setValue(null);
            fill("Place", "Room 12");
            press("Call session");
            assertThat(marked("Date and time (county time)")).isEqualTo("Enter the date and time.");
            assertThat(calledTo("Room 12")).isEmpty();
            when.setValue(LocalDateTime.of(2026, 8, 7, 14, 30));
            press("Call session");
        });
        assertThat(calledTo("Room 12")).containsExactly(LocalDateTime.of(2026, 8, 7, 14, 30));
    }

    @Test
    void a_session_that_is_not_open_is_moved_to_another_time() {
        BoardSession called = PagesOffice.done(
                "eve",
                () -> PagesOffice.the(BoardService.class)
                        .callSession(new CallSession(
                                PagesOffice.ELECTION, BodyKind.BOARD, LocalDateTime.of(2026, 8, 7, 9, 0), "Room 14")));
        pages.on("board/session/" + called.key().sessionNo(), "eve", () -> {
            press("Move session");
            DateTimePicker when = _get(DateTimePicker.class);
            when.setValue(null);
            press("Move session");
            assertThat(marked("Date and time (county time)")).isEqualTo("Enter the date and time.");
            when.setValue(LocalDateTime.of(2026, 8, 7, 15, 0));
            press("Move session");
        });
        assertThat(calledTo("Room 14")).containsExactly(LocalDateTime.of(2026, 8, 7, 15, 0));
    }

    private static List<LocalDateTime> calledTo(String place) {
        return as("eve", () -> PagesOffice.the(BoardService.class).sessions(PagesOffice.ELECTION)).stream()
                .filter(session -> session.place().equals(place))
                .map(BoardSession::calledFor)
                .toList();
    }

    @Test
    void a_member_gives_a_reason_to_stand_aside_and_to_send_a_case_back() {
        EnvelopeKey key = PagesOffice.worked("P-1049");
        SessionKey session = sitting(key, "fay");
        String check = "What the reviewers should check";
        pages.on("board/session/" + session.sessionNo(), "fay", () -> {
            press("Recuse P-1049");
            press("Recuse");
            assertThat(marked("Reason")).isEqualTo("Required. Your reason is kept with the record.");
            assertThat(aside(session)).isEmpty();
            fill("Reason", "The voter is my brother.");
            press("Recuse");
            assertThat(aside(session))
                    .extracting(one -> one.person().userName(), RecusedMember::envelopeNo, RecusedMember::ground)
                    .containsExactly(tuple(new UserName("fay"), key.envelopeNo(), "The voter is my brother."));
            press("Pull out P-1049");
            press("Send back P-1049");
            fill(check, " ");
            press("Send back");
            assertThat(marked(check)).isEqualTo("Required. Your reason is kept with the record.");
            assertThat(PagesOffice.state(key)).isEqualTo(CaseState.READY);
            fill(check, "The reference is missing.");
            press("Send back");
        });
        assertThat(PagesOffice.state(key)).isEqualTo(CaseState.OPEN);
    }

    @Test
    void a_vote_said_aloud_is_recorded_by_another_member_and_confirmed_by_the_one_who_said_it() {
        // members whom no other test of this server seats in a session
        for (String member : List.of("leo", "mia")) {
            Staff.hire(PagesOffice.primary().office().services(), member, Role.DECIDER);
        }
        EnvelopeKey key = PagesOffice.worked("P-1012");
        SessionKey session = sitting(key, "leo");
        PagesOffice.done("leo", () -> PagesOffice.the(BoardService.class).recordArrival(session, new UserName("mia")));
        pages.on("board/session/" + session.sessionNo(), "leo", () -> {
            press("Pull out P-1012");
            press("Move P-1012");
            press("Make motion");
            press("Open the vote");
            press("Yes");
            press("Record a member's vote");
            press("Record vote");
            assertThat(marked("Vote, as the member says it")).isEqualTo("Choose the vote.");
            fill("Vote, as the member says it", Vote.YES);
            press("Record vote");
            assertThat(said()).contains("All votes are in.");
            press("Close the vote");
            press("Close the vote");
        });
        assertThat(PagesOffice.state(key)).isEqualTo(CaseState.DECIDED);
        pages.on("board/session/" + session.sessionNo(), "mia", () -> {
            assertThat(said()).contains("Votes recorded for you", "recorded by leo");
            press("Confirm vote");
            assertThat(said()).doesNotContain("Votes recorded for you");
        });
    }

    @Test
    void to_count_against_the_rules_a_member_gives_the_place_in_the_law() {
        EnvelopeKey key = PagesOffice.worked("P-1050");
        PagesOffice.done(
                "ben",
                () -> PagesOffice.the(ProposalService.class).secondReview(key, PagesOffice.version(key), true, ""));
        SessionKey session = sitting(key, "gil");
        String against = "This goes against the rules' answer, which is: reject.";
        String why = "Reason (required to differ from the recommendation, table or reopen)";
        pages.on("board/session/" + session.sessionNo(), "gil", () -> {
            press("Pull out P-1050");
            press("Move P-1050");
            assertThat(said()).doesNotContain(against);
            fill("Outcome", MotionKind.COUNT);
            assertThat(said()).contains(against + " It needs a legal reference and a reason.");
            press("Make motion");
            assertThat(said()).contains(against + " To count it needs a legal reference.");
            fill("Legal reference", "5.6");
            fill(why, "The clerk of the day erred.");
            press("Make motion");
            assertThat(said()).contains("P-1050: " + against);
            press("Open the vote");
            assertThat(said()).contains("How do you vote?");
            press("Yes");
            press("Recuse P-1050");
            fill("Reason", "The voter is my brother.");
            press("Recuse");
            assertThat(said())
                    .contains("You are recused from P-1050. You do not vote on this motion.")
                    .doesNotContain("You can change your vote");
            press("Withdraw my vote");
            assertThat(said()).contains("No votes yet.").doesNotContain("Withdraw my vote");
        });
        assertThat(as("eve", () -> PagesOffice.the(SessionDetailsService.class).details(session))
                        .floor()
                        .motion()
                        .legalReference())
                .isEqualTo("5.6");
    }

    @Test
    void one_envelope_takes_five_clicks_from_the_agenda_to_its_recorded_decision() {
        for (String member : List.of("kit", "lou")) {
            Staff.hire(PagesOffice.primary().office().services(), member, Role.DECIDER);
        }
        EnvelopeKey key = PagesOffice.worked(FIVE_CLICKS);
        SessionKey session = sitting(key, "kit");
        PagesOffice.done("kit", () -> PagesOffice.the(BoardService.class).recordArrival(session, new UserName("lou")));
        List<String> clicks = List.of(
                "Move to count", "Move and open the vote", "Everyone says yes", "Close the vote…", "Close the vote");
        pages.on("board/session/" + session.sessionNo(), "kit", () -> {
            for (String click : clicks) {
                assertThat(PagesOffice.state(key)).isEqualTo(CaseState.READY);
                press(click);
            }
            assertThat(said()).contains("The vote is closed.");
        });
        assertThat(PagesOffice.state(key)).isEqualTo(CaseState.DECIDED);
        assertThat(clicks).hasSizeLessThanOrEqualTo(5);
        assertThat(as("kit", () -> PagesOffice.the(MotionService.class).votes(new MotionKey(session, 1))))
                .as("each vote is marked with who recorded it")
                .extracting(vote -> vote.userName().value() + " by " + vote.notedBy())
                .containsExactly("kit by kit", "lou by kit");
    }

    /** A session of the board that eve opened, with that member there and that envelope on its agenda. */
    private static SessionKey sitting(EnvelopeKey key, String member) {
        BoardService board = PagesOffice.the(BoardService.class);
        CallSession call = new CallSession(
                PagesOffice.ELECTION, BodyKind.BOARD, LocalDateTime.of(2026, 8, 6, 12, 0), "Board room");
        BoardSession called = PagesOffice.done("eve", () -> board.callSession(call));
        PagesOffice.done("eve", () -> board.open(called.key(), called.version()));
        PagesOffice.done("eve", () -> board.recordArrival(called.key(), new UserName(member)));
        PagesOffice.done(
                "eve", () -> PagesOffice.the(AgendaService.class).addToAgenda(called.key(), List.of(key.envelopeNo())));
        return called.key();
    }

    private static List<RecusedMember> aside(SessionKey session) {
        return as("eve", () -> PagesOffice.the(SessionDetailsService.class).details(session))
                .aside();
    }
}
