package org.proviso.board.ui;

import static com.github.mvysny.kaributesting.v10.LocatorJ._find;
import static com.github.mvysny.kaributesting.v10.LocatorJ._get;
import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.board.CasesReady.LATE;
import static org.proviso.board.CasesReady.as;

import com.github.mvysny.kaributesting.v10.MockVaadin;
import com.vaadin.flow.component.ClickEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.UI;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.proviso.access.AccessService;
import org.proviso.board.BoardMotion;
import org.proviso.board.BoardService;
import org.proviso.board.CasesReady;
import org.proviso.board.RecordRecusal;
import org.proviso.board.Sitting;
import org.proviso.board.agenda.AgendaService;
import org.proviso.board.agenda.ReadyService;
import org.proviso.board.motion.BoardVote;
import org.proviso.board.motion.MotionService;
import org.proviso.board.motion.OfficialService;
import org.proviso.board.record.PublicDisplayService;
import org.proviso.board.record.SessionDetails;
import org.proviso.board.record.SessionDetailsService;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.Refusal;
import org.proviso.core.deciding.Vote;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;
import org.proviso.review.decide.DecidedCaseService;
import org.proviso.ui.field.ActButton;

/** The parts of a meeting's page and its MotionSheet, each seen and pressed by the member who is signed in. */
class SessionDetailsPageTest {

    private static final BoardActRunner STEPS = new BoardActRunner(() -> {});

    @BeforeEach
    void aPage() {
        MockVaadin.setup();
    }

    @AfterEach
    void noPage() {
        MockVaadin.tearDown();
    }

    private static BoardServices room(TestOffice office) {
        return new BoardServices(
                office.the(BoardService.class),
                office.the(AgendaService.class),
                office.the(MotionService.class),
                office.the(org.proviso.board.motion.RecordKeepingService.class),
                office.the(org.proviso.board.motion.VoteConfirmationService.class),
                office.the(SessionDetailsService.class),
                office.the(ReadyService.class),
                office.the(OfficialService.class),
                office.the(DecidedCaseService.class),
                office.the(org.proviso.review.decide.FollowUpService.class),
                office.the(org.proviso.review.ends.EndedCaseService.class),
                office.the(PublicDisplayService.class),
                office.the(AccessService.class));
    }

    private static Sitting sitting(TestOffice office) {
        return Sitting.of(CasesReady.in(office).toReject(LATE), "eve", "fay").put(LATE);
    }

    private static SessionDetails now(Sitting sitting) {
        return sitting.cases().office().the(SessionDetailsService.class).details(sitting.key());
    }

    /** The buttons that a member sees on the floor or the agenda, by what they are called. */
    private static List<String> called(Component part) {
        return _find(part, ActButton.class).stream()
                .map(SessionDetailsPageTest::name)
                .toList();
    }

    private static String name(ActButton button) {
        return Optional.ofNullable(button.getElement().getAttribute("aria-label"))
                .orElse(button.getElement().getTextRecursively());
    }

    private static FloorPart floor(Sitting sitting, String member) {
        FloorPart floor = new FloorPart(room(sitting.cases().office()), member, STEPS);
        floor.show(now(sitting));
        return floor;
    }

    private static AgendaPart agenda(Sitting sitting, String member) {
        AgendaPart agenda = new AgendaPart(room(sitting.cases().office()), member, STEPS);
        agenda.show(now(sitting));
        return agenda;
    }

    private static Object press(Component part, String name) {
        List<ActButton> found = new ArrayList<>(_find(part, ActButton.class));
        found.removeIf(button -> !name(button).equals(name));
        assertThat(found).as(name).hasSize(1);
        ComponentUtil.fireEvent(found.get(0), new ClickEvent<>(found.get(0)));
        return name;
    }

    private static Object onTheSheet(String name) {
        return press(UI.getCurrent(), name);
    }

    private static void moved(Sitting sitting) {
        as("eve", () -> press(agenda(sitting, "eve"), "Move to reject: the voter registered after the deadline"));
        as("eve", () -> onTheSheet("Make motion"));
    }

    @OnADatabase
    void a_motion_is_moved_put_to_the_vote_voted_on_by_each_and_closed(TestOffice office) {
        Sitting sitting = sitting(office);
        moved(sitting);
        as("fay", () -> press(floor(sitting, "fay"), "Second the motion"));
        as("fay", () -> press(floor(sitting, "fay"), "Open the vote"));
        as("eve", () -> press(floor(sitting, "eve"), "Yes"));
        assertThat(as("eve", () -> called(floor(sitting, "eve"))))
                .as("not before every vote is in")
                .doesNotContain("Close the vote…");
        as("fay", () -> press(floor(sitting, "fay"), "Yes"));
        as("fay", () -> press(floor(sitting, "fay"), "Close the vote…"));
        as("fay", () -> onTheSheet("Close the vote"));
        for (EnvelopeNumber number : LATE) {
            assertThat(office.the(CaseService.class)
                            .find(new EnvelopeKey(new ElectionId(CasesReady.ID), number))
                            .orElseThrow()
                            .state())
                    .isEqualTo(CaseState.DECIDED);
        }
        assertThat(as("eve", () -> floor(sitting, "eve").getElement().getTextRecursively()))
                .contains("The motion to reject carried, 2 to 0: reject.", "eve: yes; fay: yes");
    }

    @OnADatabase
    void whoever_votes_votes_for_nobody_else_and_who_is_not_here_not_at_all(TestOffice office) {
        Sitting sitting = sitting(office);
        moved(sitting);
        as("fay", () -> press(floor(sitting, "fay"), "Open the vote"));
        as("fay", () -> press(floor(sitting, "fay"), "No"));
        List<BoardVote> votes = as(
                "eve",
                () -> office.the(MotionService.class)
                        .votes(now(sitting).floor().motion().key()));
        assertThat(votes).extracting(BoardVote::userName).containsExactly(new UserName("fay"));
        assertThat(votes).extracting(BoardVote::vote).containsExactly(Vote.NO);
        FloorPart seen = as("eve", () -> floor(sitting, "eve"));
        assertThat(called(seen)).containsExactly("Yes", "No", "Abstain", "Withdraw the motion");
        assertThat(seen.getElement().getTextRecursively())
                .contains("Voted: fay.")
                .doesNotContain("voted no");
        assertThat(as("gil", () -> called(floor(sitting, "gil")))).isEmpty();
    }

    @OnADatabase
    void who_is_recused_has_nothing_to_vote_with(TestOffice office) {
        Sitting sitting = sitting(office);
        as(
                "fay",
                () -> Sitting.done(office.the(BoardService.class)
                        .recuse(new RecordRecusal(sitting.key(), LATE.get(0), new UserName("fay"), "Her cousin."))));
        moved(sitting);
        assertThat(as("fay", () -> called(floor(sitting, "fay"))))
                .as("nor does she second it")
                .containsExactly("Open the vote", "Withdraw the motion");
        as("eve", () -> press(floor(sitting, "eve"), "Open the vote"));
        FloorPart seen = as("fay", () -> floor(sitting, "fay"));
        assertThat(called(seen)).doesNotContain("Yes", "No", "Abstain");
        assertThat(seen.getElement().getTextRecursively())
                .contains("You are recused from P-1050. You do not vote on this motion.");
        assertThat(as("eve", () -> called(floor(sitting, "eve")))).contains("Yes", "No", "Abstain");
    }

    @OnADatabase
    void the_page_says_the_rules_of_the_vote_and_what_a_tie_will_mean(TestOffice office) {
        Sitting sitting = sitting(office);
        moved(sitting);
        AttendancePart attendance = as("eve", () -> {
            AttendancePart part = new AttendancePart(room(office), new UserName("eve"), STEPS);
            part.show(now(sitting));
            return part;
        });
        assertThat(attendance.getElement().getTextRecursively())
                .contains(
                        "To reject: 2 of 3 members. (Example Election Code (invented) 9.2 (2020)",
                        "To count: a majority of the votes cast. (common practice)",
                        "Quorum: 2 present. A recused member does not count toward the quorum. (common practice)");
        assertThat(as("eve", () -> floor(sitting, "eve").getElement().getTextRecursively()))
                .contains(
                        "If the vote is tied: P-1050, P-1058 are decided: count. Rule on what a tied vote means:",
                        "If the motion fails: P-1050, P-1058 stay ready.");
    }

    /** Nobody on the board is spoken of by the name they sign in with. */
    @OnADatabase
    void people_are_called_by_their_own_names(TestOffice office) {
        Sitting sitting = sitting(office);
        office.jdbc()
                .sql("update office_user set full_name = 'Fay Alden' where user_name = 'fay'")
                .update();
        moved(sitting);
        as("eve", () -> press(floor(sitting, "eve"), "Open the vote"));
        BoardMotion motion = as("eve", () -> now(sitting).floor().motion());
        assertThat(sitting.close(motion).refusals())
                .extracting(Refusal::words)
                .containsExactly("No vote is recorded for eve, Fay Alden.");
        assertThat(as("eve", () -> office.the(BoardService.class).recordArrival(sitting.key(), new UserName("fay")))
                        .refusals())
                .extracting(Refusal::words)
                .containsExactly("Fay Alden is recorded as present in session 1 already.");
        assertThat(as("eve", () -> floor(sitting, "eve").getElement().getTextRecursively()))
                .contains("Still to vote: eve and Fay Alden.");
    }

    @OnADatabase
    void one_that_is_pulled_out_leaves_its_group_and_stands_by_itself(TestOffice office) {
        Sitting sitting = sitting(office);
        as("fay", () -> press(agenda(sitting, "fay"), "Pull out P-1050"));
        AgendaPart agenda = as("eve", () -> agenda(sitting, "eve"));
        assertThat(_get(agenda, GroupPart.class).getElement().getTextRecursively())
                .contains("P-1058")
                .doesNotContain("P-1050");
        assertThat(called(agenda)).contains("Move P-1050", "Send back P-1050").doesNotContain("Pull out P-1050");
    }
}
