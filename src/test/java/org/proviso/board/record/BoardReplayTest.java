package org.proviso.board.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.board.CasesReady.COUNT;
import static org.proviso.board.CasesReady.LATE;

import java.util.List;
import org.proviso.board.CasesReady;
import org.proviso.board.MotionKind;
import org.proviso.board.Sitting;
import org.proviso.core.ElectionId;
import org.proviso.core.rules.Reason;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.ledger.TableComparison;
import org.springframework.transaction.support.TransactionTemplate;

/** What a body did is compared with the ledger; a changed row is named. */
class BoardReplayTest {

    private static TableComparison replay(TestOffice office) {
        return office.the(BoardReplay.class).replay(new ElectionId(CasesReady.ID));
    }

    private static void changed(TestOffice office, String sql, String sentence) {
        office.the(TransactionTemplate.class).executeWithoutResult(attempt -> {
            assertThat(office.jdbc().sql(sql).update()).as(sql).isOne();
            assertThat(replay(office).first()).contains(sentence);
            attempt.setRollbackOnly();
        });
    }

    @OnBothDatabases
    void sessions_motions_and_votes_are_as_the_ledger_says_or_are_named(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT).toReject(LATE);
        Sitting board = Sitting.of(cases, "eve", "fay", "gil").put(COUNT).put(LATE);
        board.closed(board.move(MotionKind.COUNT, COUNT), "yes yes no");
        board.closed(board.move(MotionKind.REJECT, LATE, Reason.REGISTERED_LATE), "yes yes yes");
        assertThat(replay(office)).isEqualTo(new TableComparison("motions", 2, 0, List.of()));
        changed(
                office,
                "update motion set result = 'failed' where motion_no = 1",
                "session-1/motion-1 result: the table has failed, the ledger has carried.");
        changed(
                office,
                "update motion set outcome = 'count' where motion_no = 2",
                "session-1/motion-2 outcome: the table has count, the ledger has reject.");
        changed(office, "update board_session set quorum = 1", "session-1 quorum: the table has 1, the ledger has 2.");
        String gil = office.jdbc()
                .sql("select pseudonym from office_user where user_name = 'gil'")
                .query(String.class)
                .single();
        changed(
                office,
                "update vote set vote = 'yes' where motion_no = 1 and user_name = 'gil'",
                "session-1/motion-1 vote of " + gil + ": the table has yes, the ledger has no.");
        changed(
                office,
                "delete from vote where motion_no = 1 and user_name = 'gil'",
                "session-1/motion-1 vote of " + gil + ": the table has nothing, the ledger has no.");
        changed(
                office,
                "update motion_envelope set pulled_out = true where motion_no = 1 and envelope_no = 'P-1012'",
                "session-1/motion-1 envelopes: the table has P-1042, P-1049, the ledger has P-1012, P-1042, P-1049.");
    }
}
