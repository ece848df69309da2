package org.proviso.board.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.board.CasesReady.COUNT;
import static org.proviso.board.CasesReady.LATE;
import static org.proviso.board.CasesReady.NOON;
import static org.proviso.board.CasesReady.as;
import static org.proviso.board.CasesReady.key;
import static org.proviso.board.Sitting.done;
import static org.proviso.board.Sitting.refused;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.board.BoardService;
import org.proviso.board.BoardSession;
import org.proviso.board.BodyKind;
import org.proviso.board.CasesReady;
import org.proviso.board.MotionKind;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.database.OfficeTime;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.review.CaseState;
import org.proviso.review.Decision;
import org.proviso.review.decide.DecisionService;

/** An official who decides alone. */
class OfficialServiceTest {

    private static CasesReady cases(TestOffice office) {
        return CasesReady.in(office).ruled("decider.kind", "official");
    }

    private static ActResult<VoteClosed> decide(
            CasesReady cases, String who, MotionKind kind, List<EnvelopeNumber> envelopes) {
        Map<EnvelopeNumber, Integer> seen = new LinkedHashMap<>();
        envelopes.forEach(envelope -> seen.put(envelope, cases.version(envelope.value())));
        boolean rejects = kind == MotionKind.REJECT;
        DecideAsOfficial decision = new DecideAsOfficial(
                new ElectionId(CasesReady.ID),
                kind,
                seen,
                Set.of(),
                rejects ? List.of(Reason.REGISTERED_LATE) : List.of(),
                rejects ? CasesReady.REFERENCE : "",
                "");
        return as(who, () -> cases.office().the(OfficialService.class).decide(decision));
    }

    private static List<BoardSession> sessions(CasesReady cases) {
        return as("eve", () -> cases.office().the(BoardService.class).sessions(new ElectionId(CasesReady.ID)));
    }

    @OnADatabase
    void decides_in_a_session_of_one_that_lasts_the_day(TestOffice office) {
        CasesReady cases = cases(office).toCount(COUNT).toReject(LATE);
        assertThat(done(decide(cases, "eve", MotionKind.COUNT, COUNT))).isInstanceOf(VoteClosed.Settled.class);
        assertThat(done(decide(cases, "eve", MotionKind.REJECT, List.of(new EnvelopeNumber("P-1050")))))
                .isInstanceOf(VoteClosed.Settled.class);
        assertThat(office.the(DecisionService.class).standing(key("P-1050")).orElseThrow())
                .returns(DecisionOutcome.REJECT, Decision::as)
                .returns("official", Decision::decider)
                .returns(2, Decision::motionNo);
        assertThat(sessions(cases)).hasSize(1);
        assertThat(sessions(cases).get(0))
                .returns(1, BoardSession::quorum)
                .returns(BodyKind.OFFICIAL, BoardSession::body);
        OfficeTime.set(office, NOON.plusDays(1));
        assertThat(done(decide(cases, "eve", MotionKind.REJECT, List.of(new EnvelopeNumber("P-1058")))))
                .isInstanceOf(VoteClosed.Settled.class);
        assertThat(sessions(cases)).hasSize(2);
        assertThat(sessions(cases).get(0).closedAt()).isNotNull();
    }

    @OnADatabase
    void a_refused_decision_leaves_no_trace_not_even_the_session(TestOffice office) {
        CasesReady cases = cases(office).toReject(LATE);
        assertThat(refused(decide(cases, "ben", MotionKind.REJECT, LATE))).isEqualTo("P-1050 own_act, P-1058 own_act");
        assertThat(refused(decide(cases, "eve", MotionKind.COUNT, List.of(new EnvelopeNumber("P-1050")))))
                .isEqualTo("P-1050 no_reference");
        OfficeTime.set(office, NOON.minusHours(4));
        assertThat(refused(decide(cases, "eve", MotionKind.REJECT, LATE))).isEqualTo("gate_not_open");
        assertThat(sessions(cases)).isEmpty();
        assertThat(cases.now("P-1050").state()).isEqualTo(CaseState.READY);
    }

    @OnADatabase
    void another_official_decides_in_a_session_of_the_own(TestOffice office) {
        CasesReady cases = cases(office).toCount(COUNT);
        assertThat(done(decide(cases, "eve", MotionKind.COUNT, List.of(new EnvelopeNumber("P-1012")))))
                .isInstanceOf(VoteClosed.Settled.class);
        assertThat(done(decide(cases, "fay", MotionKind.COUNT, List.of(new EnvelopeNumber("P-1042")))))
                .isInstanceOf(VoteClosed.Settled.class);
        assertThat(sessions(cases)).hasSize(2);
    }

    @OnADatabase
    void where_a_board_decides_no_official_does(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        assertThat(refused(decide(cases, "eve", MotionKind.COUNT, COUNT))).isEqualTo("no_such_body");
        assertThat(sessions(cases)).isEmpty();
    }
}
