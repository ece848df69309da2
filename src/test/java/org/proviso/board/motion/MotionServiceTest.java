package org.proviso.board.motion;

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
import static org.proviso.board.Sitting.staysOpen;
import static org.proviso.core.act.ActResults.field;
import static org.proviso.core.rules.Reason.MAIL_BALLOT_ACCEPTED;
import static org.proviso.core.rules.Reason.REGISTERED_LATE;
import static org.proviso.core.rules.Reason.WRONG_PARTY_BALLOT;

import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.board.AgendaItem;
import org.proviso.board.BoardMotion;
import org.proviso.board.BoardService;
import org.proviso.board.CasesReady;
import org.proviso.board.MotionEnvelope;
import org.proviso.board.MotionKey;
import org.proviso.board.MotionKind;
import org.proviso.board.MoveMotion;
import org.proviso.board.RecordRecusal;
import org.proviso.board.Sitting;
import org.proviso.board.agenda.AgendaService;
import org.proviso.board.record.BoardReplay;
import org.proviso.board.record.Minutes;
import org.proviso.board.record.MinutesService;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.MotionResult;
import org.proviso.core.deciding.Vote;
import org.proviso.database.OfficeTime;
import org.proviso.database.OnADatabase;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.CaseState;
import org.proviso.review.Decision;
import org.proviso.review.decide.DecisionService;
import org.proviso.review.facts.LinkStore;
import org.springframework.dao.OptimisticLockingFailureException;

/** What motions and votes of a board of three with a quorum of two come to, by the rules of the samples' state. */
class MotionServiceTest {

    private static Decision decision(CasesReady cases, String envelope) {
        return cases.office().the(DecisionService.class).standing(key(envelope)).orElseThrow();
    }

    private static List<LedgerEntry> entries(CasesReady cases, String act) {
        return cases
                .office()
                .the(LedgerService.class)
                .read(LedgerChain.of(new ElectionId(CasesReady.ID)), 0, 1_000)
                .stream()
                .filter(entry -> entry.act().equals(act))
                .toList();
    }

    @OnADatabase
    void a_carried_motion_rejects_the_whole_group_at_once(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toReject(WRONG_PARTY);
        Sitting board = Sitting.of(cases, "eve", "fay", "gil").put(WRONG_PARTY);
        ActResult<VoteClosed> closed =
                board.closed(board.move(MotionKind.REJECT, WRONG_PARTY, WRONG_PARTY_BALLOT), "yes yes no");
        assertThat(done(closed)).isInstanceOf(VoteClosed.Settled.class);
        assertThat(settled(closed).now()).hasSize(2);
        assertThat(settled(closed).motion().words()).isEqualTo("The motion to reject carried, 2 to 1: reject.");
        for (EnvelopeNumber envelope : WRONG_PARTY) {
            assertThat(cases.now(envelope.value()).state()).isEqualTo(CaseState.DECIDED);
            assertThat(decision(cases, envelope.value()))
                    .returns(DecisionOutcome.REJECT, Decision::as)
                    .returns(List.of(WRONG_PARTY_BALLOT), Decision::reasons)
                    .returns(CasesReady.REFERENCE, Decision::legalReference)
                    .returns("board", Decision::decider)
                    .returns(1, Decision::motionNo);
        }
    }

    @OnADatabase
    void the_ledger_tells_how_each_voted_by_pseudonym_and_shows_no_text(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay", "gil").put(COUNT);
        BoardMotion moved = done(as(
                "eve",
                () -> board.motions()
                        .move(new MoveMotion(
                                board.key(),
                                MotionKind.COUNT,
                                Map.of(new EnvelopeNumber("P-1012"), cases.version("P-1012")),
                                Set.of(),
                                List.of(),
                                "",
                                "Mrs. Alder says so."))));
        board.closed(ActResult.accepted(moved), "yes abstains recused");
        LedgerEntry closed = entries(cases, "vote_closed").get(0);
        assertThat(closed.payload())
                .containsEntry("yes", 1L)
                .containsEntry("no", 0L)
                .containsEntry("abstains", 1L)
                .containsEntry("recused", 1L)
                .containsEntry("decided", "count")
                .containsEntry("envelopes", List.of("P-1012"));
        assertThat(closed.line()).contains("staff-TEST").contains("noted_by").doesNotContain("\"eve\"", "fay", "gil");
        assertThat(entries(cases, "motion_moved").get(0).line())
                .contains("because")
                .doesNotContain("Alder");
        assertThat(entries(cases, "decided")).hasSize(1);
        assertThat(office.the(LedgerService.class)
                        .verify(LedgerChain.of(new ElectionId(CasesReady.ID)))
                        .isWhole())
                .isTrue();
    }

    @OnADatabase
    void without_a_quorum_nothing_is_written_and_the_votes_stay(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve").put(COUNT);
        BoardMotion motion = board.voted(board.move(MotionKind.COUNT, COUNT), "yes");
        assertThat(refused(board.close(motion))).isEqualTo("no_quorum");
        assertThat(board.motion(motion.key()).end()).isNull();
        assertThat(cases.now("P-1012").state()).isEqualTo(CaseState.READY);
        assertThat(entries(cases, "vote_closed")).isEmpty();
        assertThat(as("eve", () -> board.motions().votes(motion.key())))
                .extracting(BoardVote::vote)
                .containsExactly(Vote.YES);
        as("eve", () -> done(office.the(BoardService.class).recordArrival(board.key(), new UserName("fay"))));
        assertThat(refused(board.close(motion))).isEqualTo("vote_missing");
        board.note(motion.key(), "fay", "yes");
        assertThatThrownBy(() -> board.close(motion)).isInstanceOf(OptimisticLockingFailureException.class);
        assertThat(done(board.close(board.motion(motion.key())))).isInstanceOf(VoteClosed.Settled.class);
    }

    @OnADatabase
    void a_tie_counts_where_the_pack_says_so_and_the_decision_names_the_rule(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toReject(LATE);
        Sitting board = Sitting.of(cases, "eve", "fay", "gil").put(LATE);
        ActResult<VoteClosed> closed =
                board.closed(board.move(MotionKind.REJECT, LATE, REGISTERED_LATE), "yes no abstains");
        assertThat(settled(closed).motion().end()).isEqualTo(MotionResult.TIED);
        assertThat(decision(cases, "P-1050"))
                .returns(DecisionOutcome.COUNT, Decision::as)
                .returns(List.of(), Decision::reasons)
                .returns("Example Election Code (invented) 9.3 (2020)", Decision::legalReference)
                .returns(
                        "The motion to reject was tied, 1 to 1: count. By the rule on what a tied vote means"
                                + " (decider.tie_means): Example Election Code (invented) 9.3 (2020).",
                        Decision::departsBecause);
    }

    @OnBothDatabases
    void a_motion_to_count_against_the_rules_says_so_and_on_what_ground(TestOffice office) {
        EnvelopeNumber voted = new EnvelopeNumber("P-1017");
        CasesReady cases = CasesReady.in(office).toReject(List.of(voted)).toReject(LATE);
        Sitting board =
                Sitting.of(cases, "eve", "fay", "gil").put(List.of(voted)).put(LATE);
        assertThat(refused(board.move(MotionKind.COUNT, voted, "The mail ballot was not hers.")))
                .isEqualTo("P-1017 no_reference");
        assertThat(refused(board.moveOn(MotionKind.COUNT, voted, "5.6", "")))
                .isEqualTo("P-1017 departure_without_reason");
        ActResult<BoardMotion> moved = board.moveOn(MotionKind.COUNT, voted, "5.6", "The mail ballot was not hers.");
        assertThat(done(moved).against())
                .extracting(MotionEnvelope::spoken)
                .containsExactly("P-1017: This goes against the rules' answer, which is: reject. Records show that the"
                        + " voter already voted.");
        assertThat(entries(cases, "motion_moved").get(0).payload())
                .containsEntry(
                        "against_rules",
                        List.of(Map.of("envelope", "P-1017", "rules_say", "reject", "known_to_have_voted", true)));
        assertThat(settled(board.closed(moved, "yes yes no")).now()).hasSize(1);
        assertThat(decision(cases, "P-1017"))
                .returns(DecisionOutcome.COUNT, Decision::as)
                .returns("5.6", Decision::legalReference);
        Minutes minutes = as("eve", () -> office.the(MinutesService.class).minutes(board.key()));
        assertThat(minutes.motions().get(0).against())
                .containsExactly(done(moved).against().get(0).spoken());
        assertThat(office.the(BoardReplay.class)
                        .replay(new ElectionId(CasesReady.ID))
                        .isWhole())
                .isTrue();
        office.jdbc()
                .sql("update motion_envelope set known_to_have_voted = false")
                .update();
        assertThat(office.the(BoardReplay.class)
                        .replay(new ElectionId(CasesReady.ID))
                        .isWhole())
                .isFalse();
        assertThat(done(board.move(MotionKind.REJECT, LATE, REGISTERED_LATE)).against())
                .as("a rejection goes against nothing")
                .isEmpty();
    }

    @OnADatabase
    void a_tie_counts_nobody_who_is_known_to_have_voted(TestOffice office) {
        List<EnvelopeNumber> voted = List.of(new EnvelopeNumber("P-1017"));
        CasesReady cases = CasesReady.in(office).toReject(voted);
        Sitting board = Sitting.of(cases, "eve", "fay", "gil").put(voted);
        ActResult<VoteClosed> tied =
                board.closed(board.move(MotionKind.REJECT, voted, MAIL_BALLOT_ACCEPTED), "yes no abstains");
        assertThat(done(tied)).isInstanceOf(VoteClosed.StaysOpen.class);
        assertThat(done(tied).motion().words())
                .isEqualTo("The motion to reject was tied, 1 to 1: stays open. P-1017 stays open, because records show"
                        + " that the voter voted. It counts only if a motion to count carries.");
        assertThat(cases.now("P-1017").state()).isEqualTo(CaseState.READY);
    }

    @OnADatabase
    void a_tie_counts_the_others_and_their_decisions_say_nothing_of_the_one_kept_open(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toReject(LATE);
        LinkStore links = office.the(LinkStore.class);
        office.jdbc()
                .sql("update mail_ballot set voter_id = ? where voter_id = ?")
                .params(
                        links.newest(CasesReady.key("P-1058")).orElseThrow().voterId(),
                        links.newest(CasesReady.key("P-1017")).orElseThrow().voterId())
                .update();
        Sitting board = Sitting.of(cases, "eve", "fay", "gil").put(LATE);
        ActResult<VoteClosed> tied =
                board.closed(board.move(MotionKind.REJECT, LATE, REGISTERED_LATE), "yes no abstains");
        assertThat(settled(tied).motion().words())
                .isEqualTo("The motion to reject was tied, 1 to 1: count. P-1058 stays open, because records show that"
                        + " the voter voted. It counts only if a motion to count carries.");
        assertThat(decision(cases, "P-1050"))
                .returns(DecisionOutcome.COUNT, Decision::as)
                .satisfies(made -> assertThat(made.departsBecause()).doesNotContain("P-1058"));
        assertThat(cases.now("P-1058").state()).isEqualTo(CaseState.READY);
        assertThat(entries(cases, "vote_closed").get(0).payload()).containsEntry("kept_open", List.of("P-1058"));
    }

    @OnADatabase
    void a_failed_motion_leaves_the_envelopes_ready(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toReject(LATE);
        Sitting board = Sitting.of(cases, "eve", "fay", "gil").put(LATE);
        ActResult<VoteClosed> closed = board.closed(board.move(MotionKind.REJECT, LATE, REGISTERED_LATE), "yes no no");
        assertThat(done(closed)).isInstanceOf(VoteClosed.StaysOpen.class);
        assertThat(staysOpen(closed).motion().words()).isEqualTo("The motion to reject failed, 1 to 2: stays open.");
        assertThat(cases.now("P-1050").state()).isEqualTo(CaseState.READY);
        assertThat(done(board.moveOn(
                                MotionKind.COUNT,
                                new EnvelopeNumber("P-1050"),
                                "Example Election Code (invented) 5.6 (2020)",
                                "The clerk of the day erred."))
                        .key()
                        .motionNo())
                .isEqualTo(2);
    }

    @OnADatabase
    void a_rejection_that_must_be_unanimous_fails_by_one_vote_against_it(TestOffice office) {
        CasesReady cases = CasesReady.in(office)
                .ruled("decider.vote_to_reject", "unanimous")
                .ruled("decider.failed_motion_means", "count")
                .toReject(LATE);
        Sitting board = Sitting.of(cases, "eve", "fay", "gil").put(LATE);
        board.closed(
                board.move(MotionKind.REJECT, List.of(new EnvelopeNumber("P-1050")), REGISTERED_LATE), "yes yes no");
        assertThat(decision(cases, "P-1050").as()).isEqualTo(DecisionOutcome.COUNT);
        assertThat(decision(cases, "P-1050").departsBecause())
                .contains("decider.failed_motion_means")
                .contains("signed by A. Reyes");
        board.closed(
                board.move(MotionKind.REJECT, List.of(new EnvelopeNumber("P-1058")), REGISTERED_LATE),
                "yes abstains yes");
        assertThat(decision(cases, "P-1058").as()).isEqualTo(DecisionOutcome.REJECT);
    }

    @OnADatabase
    void a_tied_motion_to_count_rejects_only_what_was_proposed_to_be_rejected(TestOffice office) {
        CasesReady cases = CasesReady.in(office)
                .ruled("decider.tie_means", "reject")
                .toReject(LATE)
                .toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay", "gil").put(LATE).put(COUNT);
        board.closed(
                board.moveOn(
                        MotionKind.COUNT,
                        new EnvelopeNumber("P-1050"),
                        "Example Election Code (invented) 5.6 (2020)",
                        "The clerk of the day erred."),
                "yes no abstains");
        assertThat(decision(cases, "P-1050"))
                .returns(DecisionOutcome.REJECT, Decision::as)
                .returns(List.of(REGISTERED_LATE), Decision::reasons)
                .returns(CasesReady.REFERENCE, Decision::legalReference);
        assertThat(refused(board.closed(
                        board.move(MotionKind.COUNT, List.of(new EnvelopeNumber("P-1012"))), "yes no abstains")))
                .isEqualTo("P-1012 no_reason, not_read_twice");
    }

    @OnADatabase
    void a_recusal_can_break_the_quorum_and_a_recused_member_neither_moves_nor_votes(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay").put(COUNT);
        BoardService boards = office.the(BoardService.class);
        BoardMotion motion = board.voted(board.move(MotionKind.COUNT, COUNT), "yes yes");
        as(
                "eve",
                () -> done(boards.recuse(new RecordRecusal(
                        board.key(), new EnvelopeNumber("P-1042"), new UserName("fay"), "My brother."))));
        assertThat(refused(board.close(motion))).isEqualTo("recused_member_voted");
        assertThat(refused(as(
                        "eve", () -> board.motions().vote(new CastVote(motion.key(), new UserName("fay"), Vote.NO)))))
                .isEqualTo("recused_member_voted");
        as("eve", () -> done(board.motions().withdrawVote(motion.key(), new UserName("fay"))));
        assertThat(refused(board.close(board.motion(motion.key())))).isEqualTo("no_quorum");
        int version = board.motion(motion.key()).version();
        as("eve", () -> done(board.motions().withdraw(motion.key(), version)));
        Sitting turned = new Sitting(cases, board.key(), List.of("fay", "eve"));
        assertThat(refused(turned.move(MotionKind.COUNT, COUNT))).isEqualTo("recused_member_moved");
        assertThat(done(turned.closed(turned.move(MotionKind.COUNT, List.of(new EnvelopeNumber("P-1012"))), "yes yes")))
                .isInstanceOf(VoteClosed.Settled.class);
        as("eve", () -> done(boards.recordArrival(board.key(), new UserName("gil"))));
        Sitting three = new Sitting(cases, board.key(), List.of("eve", "gil"));
        assertThat(done(three.closed(three.move(MotionKind.COUNT, List.of(new EnvelopeNumber("P-1042"))), "yes yes")))
                .isInstanceOf(VoteClosed.Settled.class);
        assertThat(as("eve", () -> board.motions().votes(new MotionKey(board.key(), 3))))
                .extracting(BoardVote::userName, BoardVote::vote)
                .contains(tuple(new UserName("fay"), Vote.RECUSED));
        assertThat(entries(cases, "member_recused").get(0).line()).doesNotContain("brother");
    }

    @OnADatabase
    void whoever_proposed_a_rejection_or_read_it_again_may_not_vote_on_it(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toReject(LATE).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay", "ben").put(LATE).put(COUNT);
        assertThat(as("eve", () -> board.motions().votersBarred(List.of(key("P-1050"), key("P-1012")))))
                .isEqualTo(Map.of(key("P-1050"), Set.of(new UserName("ada"), new UserName("ben"))));
        BoardMotion motion = board.voted(board.move(MotionKind.REJECT, LATE, REGISTERED_LATE), "yes yes yes");
        assertThat(refused(board.close(motion))).isEqualTo("P-1050 own_act, P-1058 own_act");
        assertThat(board.motion(motion.key()).end()).isNull();
        board.note(motion.key(), "ben", "recused");
        assertThat(done(board.close(board.motion(motion.key())))).isInstanceOf(VoteClosed.Settled.class);
        assertThat(done(board.closed(board.move(MotionKind.COUNT, COUNT), "yes yes yes")))
                .isInstanceOf(VoteClosed.Settled.class);
    }

    @OnADatabase
    void before_the_gate_the_refusal_says_until_when(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay").put(COUNT);
        BoardMotion motion = board.voted(board.move(MotionKind.COUNT, COUNT), "yes yes");
        OfficeTime.set(office, LocalDateTime.of(2026, 8, 6, 8, 59));
        ActResult<VoteClosed> early = board.close(motion);
        assertThat(refused(early)).isEqualTo("gate_not_open");
        assertThat(early.refusals().get(0).words()).isEqualTo("Not before 08/06/2026 9:00 am.");
        assertThat(cases.now("P-1012").state()).isEqualTo(CaseState.READY);
        OfficeTime.set(office, LocalDateTime.of(2026, 8, 6, 9, 0));
        assertThat(done(board.close(motion))).isInstanceOf(VoteClosed.Settled.class);
    }

    @OnADatabase
    void a_decided_envelope_is_opened_again_by_a_vote_with_its_reason(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay").put(COUNT);
        board.closed(board.move(MotionKind.COUNT, COUNT), "yes yes");
        ActResult<BoardMotion> silent = board.move(MotionKind.REOPEN, new EnvelopeNumber("P-1012"), " ");
        assertThat(refused(silent)).isEqualTo("no_reason");
        assertThat(field(silent)).isEqualTo("because");
        assertThat(refused(board.move(MotionKind.COUNT, List.of(new EnvelopeNumber("P-1012")))))
                .isEqualTo("not_in_this_state");
        ActResult<VoteClosed> tied =
                board.closed(board.move(MotionKind.REOPEN, new EnvelopeNumber("P-1012"), "A late file."), "yes no");
        assertThat(done(tied)).isInstanceOf(VoteClosed.StaysOpen.class);
        ActResult<VoteClosed> closed =
                board.closed(board.move(MotionKind.REOPEN, new EnvelopeNumber("P-1012"), "A late file."), "yes yes");
        assertThat(settled(closed).now().get(0).state()).isEqualTo(CaseState.OPEN);
        assertThat(office.the(DecisionService.class).standing(key("P-1012"))).isEmpty();
        assertThat(cases.now("P-1042").state()).isEqualTo(CaseState.DECIDED);
    }

    @OnADatabase
    void tabling_leaves_it_ready(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay").put(COUNT);
        ActResult<VoteClosed> closed = board.closed(
                board.move(MotionKind.TABLE, new EnvelopeNumber("P-1012"), "The voter comes tomorrow."), "yes yes");
        assertThat(staysOpen(closed).motion().words()).isEqualTo("The motion to table carried, 2 to 0.");
        assertThat(cases.now("P-1012").state()).isEqualTo(CaseState.READY);
    }

    @OnADatabase
    void a_case_that_changed_after_the_motion_was_made_is_not_decided_on_it(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay").put(COUNT);
        BoardMotion motion = board.voted(board.move(MotionKind.COUNT, COUNT), "yes yes");
        office.jdbc()
                .sql("update envelope_case set version = version + 1 where envelope_no = 'P-1042'")
                .update();
        assertThatThrownBy(() -> board.close(motion)).isInstanceOf(OptimisticLockingFailureException.class);
        assertThat(COUNT)
                .allSatisfy(envelope -> assertThat(cases.now(envelope).state()).isEqualTo(CaseState.READY));
        assertThat(board.motion(motion.key()).end()).isNull();
        as("eve", () -> done(board.motions().withdraw(motion.key(), motion.version())));
        MoveMotion stale = new MoveMotion(
                board.key(), MotionKind.COUNT, Map.of(new EnvelopeNumber("P-1042"), 0), Set.of(), List.of(), "", "");
        assertThatThrownBy(() -> as("eve", () -> board.motions().move(stale)))
                .isInstanceOf(OptimisticLockingFailureException.class);
    }

    @OnADatabase
    void where_one_envelope_of_a_group_may_not_be_decided_none_is(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay").put(COUNT);
        BoardMotion motion = board.voted(board.move(MotionKind.COUNT, COUNT), "yes yes");
        office.jdbc()
                .sql("update envelope set condition = 'unsealed' where envelope_no = 'P-1042'")
                .update();
        assertThat(refused(board.close(motion))).isEqualTo("P-1042 no_reference, departure_without_reason");
        assertThat(COUNT)
                .allSatisfy(envelope -> assertThat(cases.now(envelope).state()).isEqualTo(CaseState.READY));
        assertThat(entries(cases, "decided")).isEmpty();
        AgendaItem item = as("fay", () -> office.the(AgendaService.class).agenda(board.key()))
                .get(1)
                .item();
        as(
                "fay",
                () -> done(office.the(AgendaService.class)
                        .removeFromGroup(board.key(), item.envelopeNo(), item.version())));
        ActResult<VoteClosed> closed = board.close(board.motion(motion.key()));
        assertThat(settled(closed).now()).hasSize(2);
        assertThat(cases.now("P-1042").state()).isEqualTo(CaseState.READY);
    }

    @OnADatabase
    void one_motion_is_before_the_session_at_a_time(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay").put(COUNT);
        BoardMotion first = done(board.move(MotionKind.COUNT, List.of(new EnvelopeNumber("P-1012"))));
        assertThat(refused(board.move(MotionKind.COUNT, List.of(new EnvelopeNumber("P-1042")))))
                .isEqualTo("motion_pending");
        assertThat(refused(board.close(first))).isEqualTo("not_in_this_state");
        assertThat(refused(as(
                        "eve", () -> board.motions().vote(new CastVote(first.key(), new UserName("eve"), Vote.YES)))))
                .isEqualTo("not_in_this_state");
        assertThat(refused(as("eve", () -> board.motions().second(first.key(), 0))))
                .isEqualTo("own_act");
        assertThat(Key.text(done(as("fay", () -> board.motions().second(first.key(), 0)))
                        .secondedBy()))
                .isEqualTo("fay");
        assertThat(refused(as("gil", () -> board.motions().putToVote(first.key(), 1))))
                .isEqualTo("not_present");
        assertThat(refused(as("fay", () -> board.motions().second(first.key(), 1))))
                .as("it is seconded once")
                .isEqualTo("not_in_this_state");
        assertThat(refused(as("gil", () -> board.motions().withdraw(first.key(), 1))))
                .isEqualTo("not_present");
        as("eve", () -> done(board.motions().withdraw(first.key(), 1)));
        assertThat(refused(board.close(board.motion(first.key())))).isEqualTo("motion_already_decided");
        assertThat(done(board.move(MotionKind.COUNT, List.of(new EnvelopeNumber("P-1042"))))
                        .key()
                        .motionNo())
                .isEqualTo(2);
    }

    @OnADatabase
    void a_part_counts_otherwise_than_recommended_in_the_contests_that_the_motion_names(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay").put(COUNT);
        ActResult<BoardMotion> ofTwo = inPart(board, COUNT, Set.of("road-millage"));
        assertThat(refused(ofTwo)).isEqualTo("no_contests");
        assertThat(field(ofTwo)).isEqualTo("contests");
        assertThat(refused(board.closed(
                        inPart(board, List.of(new EnvelopeNumber("P-1012")), Set.of("elsewhere")), "yes yes")))
                .isEqualTo("P-1012 no_contests");
        as("eve", () -> done(board.motions().withdraw(new MotionKey(board.key(), 1), 3)));
        board.closed(inPart(board, List.of(new EnvelopeNumber("P-1012")), Set.of("road-millage")), "yes yes");
        assertThat(decision(cases, "P-1012"))
                .returns(DecisionOutcome.COUNT_IN_PART, Decision::as)
                .returns(Set.of("road-millage"), Decision::contests);
    }

    private static ActResult<BoardMotion> inPart(Sitting board, List<EnvelopeNumber> envelopes, Set<String> contests) {
        Map<EnvelopeNumber, Integer> seen = new HashMap<>();
        envelopes.forEach(envelope -> seen.put(envelope, board.cases().version(envelope.value())));
        return as(
                "eve",
                () -> board.motions()
                        .move(new MoveMotion(
                                board.key(),
                                MotionKind.COUNT_IN_PART,
                                seen,
                                contests,
                                List.of(),
                                "",
                                "The house is split.")));
    }

    @OnADatabase
    void what_is_not_one_group_is_not_moved_together(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toReject(LATE).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay").put(LATE).put(COUNT);
        assertThat(refused(board.move(
                        MotionKind.COUNT, List.of(new EnvelopeNumber("P-1050"), new EnvelopeNumber("P-1012")))))
                .isEqualTo("not_one_group");
        assertThat(refused(board.move(MotionKind.COUNT, LATE))).isEqualTo("not_one_group");
        assertThat(refused(board.move(MotionKind.REJECT, LATE))).isEqualTo("no_reason");
        assertThat(refused(board.move(MotionKind.COUNT, List.of(new EnvelopeNumber("P-1059")))))
                .isEqualTo("not_on_the_agenda");
    }
}
