package org.proviso.board.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.board.CasesReady.COUNT;
import static org.proviso.board.CasesReady.LATE;
import static org.proviso.board.CasesReady.as;

import java.util.List;
import org.proviso.access.NotPermittedException;
import org.proviso.board.BoardMotion;
import org.proviso.board.CasesReady;
import org.proviso.board.MotionKind;
import org.proviso.board.Sitting;
import org.proviso.board.agenda.EnvelopeSummary;
import org.proviso.board.agenda.ReadyGroup;
import org.proviso.board.agenda.ReadyService;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.Vote;
import org.proviso.core.rules.Reason;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.review.CaseState;
import org.proviso.review.DecidedCase;
import org.proviso.review.decide.DecidedCaseService;

/** A session as those who sit in it see it, and what is ready for them. */
class SessionDetailsServiceTest {

    private static SessionDetails seen(Sitting sitting, UserName by) {
        return as(
                by.value(),
                () -> sitting.cases().office().the(SessionDetailsService.class).details(sitting.key()));
    }

    private static String mark(Sitting sitting) {
        return as(
                "eve",
                () -> sitting.cases().office().the(SessionDetailsService.class).mark(sitting.key()));
    }

    @OnADatabase
    void whose_votes_are_in_is_seen_and_how_they_voted_is_not(TestOffice office) {
        Sitting sitting = Sitting.of(CasesReady.in(office).toReject(LATE), "eve", "fay", "gil")
                .put(LATE);
        BoardMotion motion = sitting.voted(sitting.move(MotionKind.REJECT, LATE, Reason.REGISTERED_LATE), "yes no -");
        SessionDetails.Floor floor = seen(sitting, new UserName("fay")).floor();
        assertThat(floor.voted())
                .extracting(SessionDetails.Member::userName)
                .containsExactly(new UserName("eve"), new UserName("fay"));
        assertThat(floor.missing()).extracting(SessionDetails.Member::userName).containsExactly(new UserName("gil"));
        assertThat(floor.own()).isEqualTo(Vote.NO);
        assertThat(seen(sitting, new UserName("gil")).floor().own()).isNull();
        sitting.note(motion.key(), "gil", "yes");
        sitting.close(sitting.motion(motion.key()));
        SessionDetails after = seen(sitting, new UserName("eve"));
        assertThat(after.floor()).isNull();
        assertThat(after.ended())
                .extracting(BoardMotion::words)
                .containsExactly(sitting.motion(motion.key()).words());
        assertThat(after.agenda()).extracting(SessionDetails.Item::state).containsOnly(CaseState.DECIDED);
    }

    @OnADatabase
    void the_mark_changes_with_a_vote_and_stays_where_nothing_happens(TestOffice office) {
        Sitting sitting =
                Sitting.of(CasesReady.in(office).toCount(COUNT), "eve", "fay").put(COUNT);
        BoardMotion motion = sitting.voted(sitting.move(MotionKind.COUNT, COUNT), "- -");
        String before = mark(sitting);
        assertThat(mark(sitting)).isEqualTo(before);
        sitting.note(motion.key(), "fay", "yes");
        assertThat(mark(sitting)).isNotEqualTo(before);
    }

    @OnADatabase
    void what_is_ready_stands_in_groups_with_its_place_in_the_law(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT).toReject(LATE);
        ReadyService ready = office.the(ReadyService.class);
        List<ReadyGroup> groups = as("eve", () -> ready.groups(new ElectionId(CasesReady.ID)));
        assertThat(groups)
                .extracting(ReadyGroup::outcome)
                .containsExactly(DecisionOutcome.COUNT, DecisionOutcome.REJECT);
        assertThat(groups.get(0).envelopes()).containsOnlyKeys(COUNT);
        assertThat(groups.get(1).envelopes()).containsEntry(new EnvelopeNumber("P-1050"), cases.version("P-1050"));
        assertThat(groups.get(1).references()).containsExactly(CasesReady.REFERENCE);
        EnvelopeSummary line = as(
                        "eve", () -> ready.lines(new ElectionId(CasesReady.ID), List.of(new EnvelopeNumber("P-1050"))))
                .get(0);
        assertThat(line.explanation().get(0)).isEqualTo("The voter registered after the deadline.");
        assertThat(List.of(line.proposedBy(), line.secondReadBy())).containsExactly("ada", "ben");
        assertThatThrownBy(() -> as(
                        "ada", () -> ready.lines(new ElectionId(CasesReady.ID), List.of(new EnvelopeNumber("P-1050")))))
                .isInstanceOf(NotPermittedException.class);
    }

    @OnADatabase
    void what_stands_is_counted_and_read_a_page_at_a_time(TestOffice office) {
        Sitting sitting = Sitting.of(CasesReady.in(office).toCount(COUNT).toReject(LATE), "eve", "fay")
                .put(COUNT)
                .put(LATE);
        sitting.closed(sitting.move(MotionKind.COUNT, COUNT), "yes yes");
        sitting.closed(sitting.move(MotionKind.REJECT, LATE, Reason.REGISTERED_LATE), "yes yes");
        DecidedCaseService decisions = office.the(DecidedCaseService.class);
        assertThat(as("eve", () -> decisions.counts(new ElectionId(CasesReady.ID))))
                .containsEntry(DecisionOutcome.COUNT, 3)
                .containsEntry(DecisionOutcome.REJECT, 2)
                .doesNotContainKey(DecisionOutcome.COUNT_IN_PART);
        List<DecidedCase> page = as("eve", () -> decisions.standing(new ElectionId(CasesReady.ID), 1, 3));
        assertThat(page).hasSize(3).extracting(DecidedCase::state).containsOnly(CaseState.DECIDED);
        assertThat(as("eve", () -> decisions.standing(new ElectionId(CasesReady.ID), 5, 3)))
                .isEmpty();
    }
}
