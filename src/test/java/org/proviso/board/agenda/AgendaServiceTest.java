package org.proviso.board.agenda;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.proviso.board.CasesReady.COUNT;
import static org.proviso.board.CasesReady.LATE;
import static org.proviso.board.CasesReady.WRONG_PARTY;
import static org.proviso.board.CasesReady.as;
import static org.proviso.board.CasesReady.key;
import static org.proviso.board.Sitting.done;
import static org.proviso.board.Sitting.refused;
import static org.proviso.board.Sitting.settled;

import java.util.List;
import org.proviso.board.AgendaItem;
import org.proviso.board.BoardService;
import org.proviso.board.CasesReady;
import org.proviso.board.MotionKind;
import org.proviso.board.ProposalForDecision;
import org.proviso.board.SessionKey;
import org.proviso.board.Sitting;
import org.proviso.board.motion.VoteClosed;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.review.decide.DecidedCaseService;
import org.springframework.dao.OptimisticLockingFailureException;

/** What a session has before it, and in which groups. */
class AgendaServiceTest {

    private static AgendaItem item(TestOffice office, SessionKey key, String envelope) {
        return as("eve", () -> office.the(AgendaService.class).agenda(key)).stream()
                .map(AgendaLine::item)
                .filter(item -> item.envelopeNo().equals(new EnvelopeNumber(envelope)))
                .findFirst()
                .orElseThrow();
    }

    @OnADatabase
    void all_that_is_ready_is_put_in_consent_groups(TestOffice office) {
        CasesReady cases =
                CasesReady.in(office).toReject(WRONG_PARTY).toCount(COUNT).toReject(LATE);
        Sitting board = Sitting.of(cases, "eve", "fay");
        List<AgendaItem> agenda =
                as("eve", () -> done(office.the(AgendaService.class).addAllReady(board.key())));
        assertThat(agenda)
                .extracting(AgendaItem::place, AgendaItem::envelopeNo, AgendaItem::group, AgendaItem::primaryReason)
                .containsExactly(
                        tuple(1, new EnvelopeNumber("P-1012"), 1, null),
                        tuple(2, new EnvelopeNumber("P-1042"), 1, null),
                        tuple(3, new EnvelopeNumber("P-1049"), 1, null),
                        tuple(4, new EnvelopeNumber("P-1050"), 2, Reason.REGISTERED_LATE),
                        tuple(5, new EnvelopeNumber("P-1058"), 2, Reason.REGISTERED_LATE),
                        tuple(6, new EnvelopeNumber("P-1019"), 3, Reason.WRONG_PARTY_BALLOT),
                        tuple(7, new EnvelopeNumber("P-1028"), 3, Reason.WRONG_PARTY_BALLOT));
        assertThat(as("eve", () -> office.the(AgendaService.class).agenda(board.key()))
                        .get(3)
                        .proposed())
                .returns(new UserName("ada"), ProposalForDecision::proposedBy)
                .returns(new UserName("ben"), ProposalForDecision::secondReadBy);
    }

    @OnADatabase
    void what_comes_later_joins_its_group_or_opens_the_next(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toReject(WRONG_PARTY).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay").put(List.of(new EnvelopeNumber("P-1028")));
        board.put(List.of(new EnvelopeNumber("P-1049"), new EnvelopeNumber("P-1019"), new EnvelopeNumber("P-1028")));
        assertThat(item(office, board.key(), "P-1019"))
                .returns(1, AgendaItem::group)
                .returns(2, AgendaItem::place);
        assertThat(item(office, board.key(), "P-1049"))
                .returns(2, AgendaItem::group)
                .returns(3, AgendaItem::place);
    }

    @OnADatabase
    void an_envelope_is_on_one_agenda_of_a_body_at_a_time_and_all_are_put_or_none(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay").put(List.of(new EnvelopeNumber("P-1012")));
        Sitting other = Sitting.of(cases, "gil");
        AgendaService agendas = office.the(AgendaService.class);
        assertThat(refused(as(
                        "gil",
                        () -> agendas.addToAgenda(
                                other.key(),
                                List.of(
                                        new EnvelopeNumber("P-1012"),
                                        new EnvelopeNumber("P-1042"),
                                        new EnvelopeNumber("P-1050"))))))
                .isEqualTo("P-1012 on_another_agenda, P-1050 not_in_this_state");
        assertThat(as("gil", () -> agendas.agenda(other.key()))).isEmpty();
        assertThat(as("gil", () -> done(agendas.addAllReady(other.key())))).hasSize(2);
        as("eve", () -> done(office.the(BoardService.class).close(board.key(), 1)));
        assertThat(refused(as("eve", () -> agendas.addToAgenda(board.key(), List.of(new EnvelopeNumber("P-1042"))))))
                .isEqualTo("not_in_this_state, P-1042 on_another_agenda");
        assertThat(as("gil", () -> done(agendas.addToAgenda(other.key(), List.of(new EnvelopeNumber("P-1012"))))))
                .hasSize(3);
        assertThatThrownBy(() ->
                        as("gil", () -> agendas.addToAgenda(other.key(), List.of(new EnvelopeNumber("P-0000")))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @OnADatabase
    void one_member_pulls_an_envelope_out_of_its_group(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay", "gil").put(COUNT);
        AgendaService agendas = office.the(AgendaService.class);
        AgendaItem pulled =
                as("gil", () -> done(agendas.removeFromGroup(board.key(), new EnvelopeNumber("P-1042"), 0)));
        assertThat(pulled).returns("gil", AgendaItem::pulledOutBy).returns(true, AgendaItem::standsAlone);
        assertThat(refused(as("fay", () -> agendas.removeFromGroup(board.key(), new EnvelopeNumber("P-1042"), 1))))
                .isEqualTo("not_one_group");
        assertThatThrownBy(() -> as("fay", () -> agendas.removeFromGroup(board.key(), new EnvelopeNumber("P-1012"), 7)))
                .isInstanceOf(OptimisticLockingFailureException.class);
        assertThat(refused(board.move(MotionKind.COUNT, COUNT))).isEqualTo("not_one_group");
        ActResult<VoteClosed> rest = board.closed(
                board.move(MotionKind.COUNT, List.of(new EnvelopeNumber("P-1012"), new EnvelopeNumber("P-1049"))),
                "yes yes yes");
        assertThat(settled(rest).now()).hasSize(2);
        board.put(COUNT);
        assertThat(item(office, board.key(), "P-1042").pulledOutBy()).isEqualTo("gil");
        assertThat(done(board.closed(
                        board.move(MotionKind.COUNT, List.of(new EnvelopeNumber("P-1042"))), "yes yes no")))
                .isInstanceOf(VoteClosed.Settled.class);
    }

    @OnADatabase
    void what_was_proposed_otherwise_meanwhile_is_placed_anew_before_its_group_is_moved(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toReject(LATE);
        Sitting board = Sitting.of(cases, "eve", "fay").put(LATE);
        as(
                "eve",
                () -> office.the(DecidedCaseService.class)
                        .sendBack(key("P-1050"), cases.version("P-1050"), "Look at the postmark."));
        cases.toRejectFor(Reason.WRONG_PARTY_BALLOT, "P-1050");
        assertThat(refused(board.move(MotionKind.REJECT, LATE, Reason.REGISTERED_LATE)))
                .isEqualTo("not_in_this_state");
        board.put(LATE);
        assertThat(item(office, board.key(), "P-1050"))
                .returns(2, AgendaItem::group)
                .returns(DecisionOutcome.REJECT, AgendaItem::proposed)
                .returns(1, AgendaItem::place);
        assertThat(refused(board.move(MotionKind.REJECT, LATE, Reason.REGISTERED_LATE)))
                .isEqualTo("not_one_group");
    }
}
