package org.proviso.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.board.CasesReady.COUNT;
import static org.proviso.board.CasesReady.LATE;
import static org.proviso.board.CasesReady.as;
import static org.proviso.board.CasesReady.key;
import static org.proviso.board.Sitting.done;
import static org.proviso.board.Sitting.refused;
import static org.proviso.board.Sitting.settled;
import static org.proviso.board.Sitting.waits;
import static org.proviso.core.rules.Reason.REGISTERED_LATE;
import static org.proviso.core.rules.Reason.WRONG_PARTY_BALLOT;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.proviso.board.motion.VoteClosed;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.MotionResult;
import org.proviso.database.OfficeTime;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.CaseState;
import org.proviso.review.Decision;
import org.proviso.review.decide.DecisionService;

/** Two bodies that each vote in a session of their own: the second vote on the same decides. */
class TwoBodiesTest {

    private static CasesReady cases(TestOffice office) {
        return CasesReady.in(office).ruled("decider.kind", "two_bodies");
    }

    private static Sitting first(CasesReady cases) {
        return Sitting.of(cases, BodyKind.FIRST, "eve", "fay");
    }

    private static Sitting second(CasesReady cases) {
        return Sitting.of(cases, BodyKind.SECOND, "gil", "hal");
    }

    @OnADatabase
    void the_second_bodys_vote_on_the_same_decides_for_both(TestOffice office) {
        CasesReady cases = cases(office)
                .ruled("decider.vote_to_reject", "majority_of_votes_cast")
                .toReject(LATE);
        Sitting first = first(cases).put(LATE);
        Sitting second = second(cases).put(LATE);
        ActResult<VoteClosed> waiting = second.closed(second.move(MotionKind.REJECT, LATE, REGISTERED_LATE), "yes yes");
        assertThat(waits(waiting).motion())
                .returns(MotionResult.CARRIED, BoardMotion::end)
                .returns("The motion to reject carried, 2 to 0: waiting for the other body.", BoardMotion::words);
        assertThat(cases.now("P-1050").state()).isEqualTo(CaseState.READY);
        ActResult<VoteClosed> closed =
                first.closed(first.move(MotionKind.REJECT, LATE, REGISTERED_LATE), "yes abstains");
        assertThat(settled(closed).now()).hasSize(2);
        assertThat(settled(closed).motion())
                .returns("The motion to reject carried, 1 to 0 and 2 to 0: reject.", BoardMotion::words)
                .returns(new MotionKey(second.key(), 1), BoardMotion::joined);
        assertThat(second.motion(new MotionKey(second.key(), 1)).joined()).isEqualTo(new MotionKey(first.key(), 1));
        assertThat(office.the(DecisionService.class).standing(key("P-1050")).orElseThrow())
                .returns(DecisionOutcome.REJECT, Decision::as)
                .returns("two_bodies", Decision::decider);
        List<LedgerEntry> chain =
                office.the(LedgerService.class).read(LedgerChain.of(new ElectionId(CasesReady.ID)), 0, 1_000);
        assertThat(chain.get(chain.size() - 1).payload()).containsEntry("read_with", "session-2/motion-1");
    }

    @OnADatabase
    void a_motion_that_one_body_lost_settles_as_the_pack_says(TestOffice office) {
        CasesReady cases =
                cases(office).ruled("decider.failed_motion_means", "count").toReject(LATE);
        Sitting first = first(cases).put(LATE);
        Sitting second = second(cases).put(LATE);
        first.closed(first.move(MotionKind.REJECT, List.of(new EnvelopeNumber("P-1050")), REGISTERED_LATE), "yes yes");
        ActResult<VoteClosed> closed = second.closed(
                second.move(MotionKind.REJECT, List.of(new EnvelopeNumber("P-1050")), REGISTERED_LATE), "no no");
        assertThat(settled(closed).motion().end()).isEqualTo(MotionResult.FAILED);
        assertThat(first.motion(new MotionKey(first.key(), 1)).end()).isEqualTo(MotionResult.CARRIED);
        assertThat(office.the(DecisionService.class).standing(key("P-1050")).orElseThrow())
                .returns(DecisionOutcome.COUNT, Decision::as)
                .extracting(Decision::departsBecause)
                .asString()
                .startsWith("The motion to reject failed, 2 to 0 and 0 to 2: count. By the rule on");
    }

    @OnADatabase
    void a_vote_on_something_else_waits_and_the_newest_vote_of_a_body_is_the_one_that_counts(TestOffice office) {
        CasesReady cases = cases(office).toReject(LATE);
        Sitting first = first(cases).put(LATE);
        Sitting second = second(cases).put(LATE);
        first.closed(first.move(MotionKind.REJECT, LATE, REGISTERED_LATE), "yes yes");
        assertThat(done(second.closed(
                        second.move(MotionKind.REJECT, List.of(new EnvelopeNumber("P-1050")), REGISTERED_LATE),
                        "yes yes")))
                .as("one of the two envelopes only")
                .isInstanceOf(VoteClosed.WaitsForOtherBody.class);
        assertThat(done(second.closed(second.move(MotionKind.REJECT, LATE, WRONG_PARTY_BALLOT), "yes yes")))
                .as("another reason")
                .isInstanceOf(VoteClosed.WaitsForOtherBody.class);
        assertThat(done(first.closed(
                        first.move(MotionKind.REJECT, List.of(new EnvelopeNumber("P-1050")), REGISTERED_LATE),
                        "yes yes")))
                .as("the second body voted otherwise since")
                .isInstanceOf(VoteClosed.WaitsForOtherBody.class);
        assertThat(done(second.closed(
                        second.move(MotionKind.REJECT, List.of(new EnvelopeNumber("P-1050")), REGISTERED_LATE),
                        "yes yes")))
                .isInstanceOf(VoteClosed.Settled.class);
        assertThat(cases.now("P-1058").state()).isEqualTo(CaseState.READY);
    }

    @OnADatabase
    void a_vote_of_one_body_does_not_stand_where_its_own_rules_are_broken(TestOffice office) {
        CasesReady cases = cases(office).toReject(LATE);
        Sitting alone = Sitting.of(cases, BodyKind.FIRST, "eve").put(LATE);
        BoardMotion motion = alone.voted(alone.move(MotionKind.REJECT, LATE, REGISTERED_LATE), "yes");
        assertThat(refused(alone.close(motion))).isEqualTo("no_quorum");
        as("eve", () -> done(office.the(BoardService.class).recordArrival(alone.key(), new UserName("ben"))));
        alone.note(motion.key(), "ben", "yes");
        assertThat(refused(alone.close(alone.motion(motion.key()))))
                .as("ben read the proposal a second time")
                .isEqualTo("P-1050 own_act, P-1058 own_act");
    }

    @OnADatabase
    void of_two_bodies_that_close_at_the_same_moment_one_waits_and_the_other_decides(TestOffice office)
            throws InterruptedException, ExecutionException {
        CasesReady cases = cases(office).toReject(LATE);
        Sitting first = first(cases).put(LATE);
        Sitting second = second(cases).put(LATE);
        BoardMotion motion = first.voted(first.move(MotionKind.REJECT, LATE, REGISTERED_LATE), "yes yes");
        BoardMotion other = second.voted(second.move(MotionKind.REJECT, LATE, REGISTERED_LATE), "yes yes");
        ExecutorService both = Executors.newFixedThreadPool(2);
        try {
            CountDownLatch start = new CountDownLatch(1);
            Future<ActResult<VoteClosed>> closing = both.submit(() -> at(start, first, motion));
            Future<ActResult<VoteClosed>> closingToo = both.submit(() -> at(start, second, other));
            start.countDown();
            assertThat(List.of(done(closing.get()), done(closingToo.get())))
                    .hasAtLeastOneElementOfType(VoteClosed.WaitsForOtherBody.class)
                    .hasAtLeastOneElementOfType(VoteClosed.Settled.class);
        } finally {
            both.shutdownNow();
        }
    }

    private static ActResult<VoteClosed> at(CountDownLatch start, Sitting sitting, BoardMotion motion)
            throws InterruptedException {
        start.await();
        return sitting.close(motion);
    }

    @OnADatabase
    void nobody_sits_on_both_bodies(TestOffice office) {
        CasesReady cases = cases(office);
        Sitting first = first(cases);
        Sitting second = second(cases);
        BoardService boards = office.the(BoardService.class);
        OfficeTime.set(office, CasesReady.NOON.plusMinutes(1));
        as("eve", () -> done(boards.recordDeparture(first.key(), new UserName("fay"))));
        assertThat(refused(as("gil", () -> boards.recordArrival(second.key(), new UserName("fay")))))
                .isEqualTo("sits_on_the_other_body");
        assertThat(refused(as(
                        "gil",
                        () -> boards.callSession(
                                new CallSession(new ElectionId(CasesReady.ID), BodyKind.BOARD, CasesReady.NOON, "")))))
                .isEqualTo("no_such_body");
    }

    @OnADatabase
    void both_bodies_open_again_what_both_decided_and_each_tables_for_itself(TestOffice office) {
        CasesReady cases = cases(office).toCount(COUNT);
        Sitting first = first(cases).put(COUNT);
        Sitting second = second(cases).put(COUNT);
        assertThat(done(first.closed(
                        first.move(MotionKind.TABLE, new EnvelopeNumber("P-1012"), "Tomorrow."), "yes yes")))
                .isInstanceOf(VoteClosed.StaysOpen.class);
        first.closed(first.move(MotionKind.COUNT, COUNT), "yes yes");
        second.closed(second.move(MotionKind.COUNT, COUNT), "yes yes");
        assertThat(cases.now("P-1012").state()).isEqualTo(CaseState.DECIDED);
        assertThat(done(second.closed(
                        second.move(MotionKind.REOPEN, new EnvelopeNumber("P-1012"), "A late file."), "yes yes")))
                .isInstanceOf(VoteClosed.WaitsForOtherBody.class);
        assertThat(cases.now("P-1012").state()).isEqualTo(CaseState.DECIDED);
        assertThat(done(first.closed(
                        first.move(MotionKind.REOPEN, new EnvelopeNumber("P-1012"), "A late file."), "yes yes")))
                .isInstanceOf(VoteClosed.Settled.class);
        assertThat(cases.now("P-1012").state()).isEqualTo(CaseState.OPEN);
    }
}
