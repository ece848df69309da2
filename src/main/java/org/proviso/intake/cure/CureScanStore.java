package org.proviso.intake.cure;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.intake.StoredImage;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of scans and photos of what voters brought. */
@Repository
class CureScanStore {

    /** A scan as it is compared with the ledger. */
    record ScanRow(EnvelopeNumber envelopeNo, int cureNo, int number, String sha256, UserName keptBy) {}

    /** A scan as its row has it. */
    private record Row(
            ElectionId electionId,
            EnvelopeNumber envelopeNo,
            int cureNo,
            int number,
            StoredImage image,
            UserName by,
            Instant at) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    CureScanStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** Adds a scan under the next number of its evidence, whose envelope the caller has locked. */
    CureScan insert(ElectionId electionId, EnvelopeNumber envelopeNo, int cureNo, StoredImage image, UserName by) {
        int number = 1
                + scans(electionId, envelopeNo).stream()
                        .filter(scan -> scan.cureNo() == cureNo)
                        .mapToInt(CureScan::number)
                        .max()
                        .orElse(0);
        jdbc.sql("""
                        insert into cure_scan (election_id, envelope_no, cure_no, scan_no, media_type, sha256, content,
                            kept_by, kept_at)
                        values (:electionId, :envelopeNo, :cureNo, :number, :image.mediaType, :image.sha256,
                            :image.content, :by, :at)""")
                .paramSource(new Row(electionId, envelopeNo, cureNo, number, image, by, clock.instant()))
                .update();
        return new CureScan(cureNo, number, image.mediaType());
    }

    /** The scans of an envelope's evidence without their bytes, in the order in which they were kept. */
    List<CureScan> scans(ElectionId electionId, EnvelopeNumber envelopeNo) {
        return jdbc.sql("""
                        select s.cure_no, s.scan_no as number, s.media_type from cure_scan s
                        where s.election_id = ? and s.envelope_no = ? order by s.cure_no, s.scan_no""")
                .params(electionId, envelopeNo)
                .query(CureScan.class)
                .list();
    }

    /** One scan with its bytes. */
    Optional<StoredImage> find(ElectionId electionId, EnvelopeNumber envelopeNo, int cureNo, int number) {
        return jdbc.sql("""
                        select s.media_type, s.sha256, s.content from cure_scan s
                        where s.election_id = ? and s.envelope_no = ? and s.cure_no = ? and s.scan_no = ?""")
                .params(electionId, envelopeNo, cureNo, number)
                .query((row, line) ->
                        new StoredImage(row.getString("media_type"), row.getString("sha256"), row.getBytes("content")))
                .optional();
    }

    /** Whether the very same picture is kept with this evidence. */
    boolean has(ElectionId electionId, EnvelopeNumber envelopeNo, int cureNo, String sha256) {
        return rows(electionId).stream()
                .anyMatch(row -> row.envelopeNo().equals(envelopeNo)
                        && row.cureNo() == cureNo
                        && row.sha256().equals(sha256));
    }

    /** Every scan of an election. */
    List<ScanRow> rows(ElectionId electionId) {
        return jdbc.sql("""
                        select s.envelope_no, s.cure_no, s.scan_no as number, s.sha256, s.kept_by from cure_scan s
                        where s.election_id = ? order by s.envelope_no, s.cure_no, s.scan_no""").param(electionId).query(ScanRow.class).list();
    }
}
