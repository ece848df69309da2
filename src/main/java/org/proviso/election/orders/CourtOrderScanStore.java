package org.proviso.election.orders;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of scans of court orders. */
@Repository
class CourtOrderScanStore {

    /** A scan as its row has it. */
    private record Row(ElectionId electionId, int orderNo, int number, KeptPaper paper, UserName by, Instant at) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    CourtOrderScanStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** Adds a scan under the next number of its order; of two at the same moment the second is told. */
    CourtOrderScan insert(ElectionId electionId, int orderNo, KeptPaper paper, UserName by) {
        int number =
                jdbc.sql("""
                        select coalesce(max(scan_no), 0) + 1 from court_order_scan
                        where election_id = ? and order_no = ?""").params(electionId, orderNo).query(Integer.class).single();
        try {
            jdbc.sql("""
                            insert into court_order_scan (election_id, order_no, scan_no, media_type, sha256, content,
                                kept_by, kept_at)
                            values (:electionId, :orderNo, :number, :paper.mediaType, :paper.sha256, :paper.content,
                                :by, :at)""")
                    .paramSource(new Row(electionId, orderNo, number, paper, by, clock.instant()))
                    .update();
        } catch (DuplicateKeyException e) {
            throw new OptimisticLockingFailureException("A scan of order " + orderNo + " was added meanwhile.", e);
        }
        return new CourtOrderScan(orderNo, number, paper.mediaType());
    }

    /** The scans of an election's orders without their bytes, in the order in which they were kept. */
    List<CourtOrderScan> all(ElectionId electionId) {
        return jdbc.sql("""
                        select s.order_no, s.scan_no as number, s.media_type from court_order_scan s
                        where s.election_id = ? order by s.order_no, s.scan_no""").param(electionId).query(CourtOrderScan.class).list();
    }

    /** Whether the very same file is kept with this order. */
    boolean has(ElectionId electionId, int orderNo, String sha256) {
        return jdbc.sql("""
                                select count(*) from court_order_scan
                                where election_id = ? and order_no = ? and sha256 = ?""")
                        .params(electionId, orderNo, sha256)
                        .query(Integer.class)
                        .single()
                > 0;
    }

    /** One scan with its bytes. */
    Optional<KeptPaper> find(ElectionId electionId, int orderNo, int number) {
        return jdbc.sql("""
                        select s.media_type, s.sha256, s.content from court_order_scan s
                        where s.election_id = ? and s.order_no = ? and s.scan_no = ?""")
                .params(electionId, orderNo, number)
                .query((row, line) ->
                        new KeptPaper(row.getString("media_type"), row.getString("sha256"), row.getBytes("content")))
                .optional();
    }
}
