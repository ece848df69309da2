package org.proviso.canvass;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of closings of elections and of their reopening. */
@Repository
class ClosingStore {

    private static final String SELECT =
            "select c.*, c.closing_no as number from canvass_closing c where c.election_id = ? order by c.closing_no";

    private final JdbcClient jdbc;
    private final Clock clock;

    ClosingStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** In their order. */
    List<CanvassClosing> all(ElectionId electionId) {
        return jdbc.sql(SELECT).param(electionId).query(CanvassClosing.class).list();
    }

    /** The closing by which the election is closed now. */
    Optional<CanvassClosing> standing(ElectionId electionId) {
        return all(electionId).stream().filter(CanvassClosing::stands).findFirst();
    }

    void insert(ElectionId electionId, UserName by, PlaceFigures total) {
        jdbc.sql("""
                        insert into canvass_closing (election_id, closing_no, closed_by, closed_at, received, counted,
                            counted_in_part, rejected, version)
                        values (:electionId, :number, :by, :at, :received, :counted, :countedInPart, :rejected, 0)""")
                .param("electionId", electionId)
                .param("number", all(electionId).size() + 1)
                .param("by", by)
                .param("at", clock.instant())
                .param("received", total.number(Figure.RECEIVED))
                .param("counted", total.number(Figure.COUNTED))
                .param("countedInPart", total.number(Figure.COUNTED_IN_PART))
                .param("rejected", total.number(Figure.REJECTED))
                .update();
    }

    /** The ledger's head is known once the closing is recorded, in the same transaction. */
    void headed(ElectionId electionId, String hash) {
        jdbc.sql("update canvass_closing set ledger_head = ? where election_id = ? and reopened_at is null")
                .params(hash, electionId)
                .update();
    }

    /** Somebody asks to reopen (null: nobody asks any more). */
    void ask(CanvassClosing closing, @Nullable UserName by, String because) {
        changed(jdbc.sql("""
                        update canvass_closing set reopen_asked_by = ?, reopen_because = ?, version = version + 1
                        where election_id = ? and closing_no = ? and version = ?""")
                .params(by, because, closing.electionId(), closing.number(), closing.version())
                .update());
    }

    void reopened(CanvassClosing closing, UserName by) {
        changed(jdbc.sql("""
                        update canvass_closing set reopened_by = ?, reopened_at = ?, version = version + 1
                        where election_id = ? and closing_no = ? and version = ?""")
                .params(by, clock.instant(), closing.electionId(), closing.number(), closing.version())
                .update());
    }

    private static void changed(int rows) {
        if (rows == 0) {
            throw new OptimisticLockingFailureException("Somebody changed it at the same moment.");
        }
    }
}
