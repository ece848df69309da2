package org.proviso.intake.correction;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.chain.CanonicalJson;
import org.proviso.files.ledger.LedgerJsonReader;
import org.proviso.intake.CodeColumn;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of corrections, and how a correction changes the row of its envelope. */
@Repository
class CorrectionStore {

    /** A correction as its row has it. */
    record Row(
            EnvelopeNumber envelopeNo,
            int number,
            Map<String, String> was,
            Map<String, String> became,
            String because,
            UserName by) {}

    /** Where and how an envelope was cast, over what stood there in that version. */
    private record Change(
            ElectionId electionId, EnvelopeNumber envelopeNo, int version, Envelope.Cast cast, String issueReasons) {}

    /** A correction with the texts as their columns have them. */
    private record Added(ElectionId electionId, Row row, String was, String became, Instant now) {}

    private final JdbcClient jdbc;

    CorrectionStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Writes where and how it was cast, over what stood there in that version. */
    void change(ElectionId electionId, EnvelopeNumber envelopeNo, int version, Envelope.Cast cast) {
        int changed = jdbc.sql("""
                        update envelope set voting_location = :cast.votingLocation, precinct_cast = :cast.precinct,
                            style_cast = :cast.ballotStyle, party_ballot_cast = :cast.partyBallot, cast_at = :cast.at,
                            extended_hours = :cast.extendedHours, in_line_at_close = :cast.inLineAtClose,
                            issue_reasons = :issueReasons, version = version + 1
                        where election_id = :electionId and envelope_no = :envelopeNo and version = :version""")
                .paramSource(new Change(electionId, envelopeNo, version, cast, CodeColumn.joined(cast.issueReasons())))
                .update();
        if (changed == 0) {
            throw stale(envelopeNo);
        }
    }

    static OptimisticLockingFailureException stale(EnvelopeNumber envelopeNo) {
        return new OptimisticLockingFailureException(
                "The envelope " + envelopeNo + " was changed by somebody else since you opened it.");
    }

    /** The stamp of its arrival; an envelope of a file has none. */
    Optional<LocalDateTime> receivedAt(ElectionId electionId, EnvelopeNumber envelopeNo) {
        return jdbc.sql("select received_at from envelope where election_id = ? and envelope_no = ?")
                .params(electionId, envelopeNo)
                .query((row, number) -> Optional.ofNullable(row.getObject("received_at", LocalDateTime.class)))
                .single();
    }

    /** Adds a correction under the next number of its envelope, whose row the caller has locked. */
    void insert(ElectionId electionId, Row correction, Instant now) {
        jdbc.sql("""
                        insert into envelope_correction (election_id, envelope_no, correction_no, was, became, because,
                            corrected_by, corrected_at)
                        values (:electionId, :row.envelopeNo, :row.number, :was, :became, :row.because, :row.by, :now)""")
                .paramSource(new Added(
                        electionId,
                        correction,
                        CanonicalJson.of(correction.was()),
                        CanonicalJson.of(correction.became()),
                        now))
                .update();
    }

    int nextNumber(ElectionId electionId, EnvelopeNumber envelopeNo) {
        return jdbc.sql("""
                        select coalesce(max(correction_no), 0) + 1 from envelope_correction
                        where election_id = ? and envelope_no = ?""").params(electionId, envelopeNo).query(Integer.class).single();
    }

    /** The corrections of one envelope in their order. */
    List<Row> of(ElectionId electionId, EnvelopeNumber envelopeNo) {
        return jdbc.sql("""
                        select * from envelope_correction where election_id = ? and envelope_no = ?
                        order by correction_no""")
                .params(electionId, envelopeNo)
                .query(CorrectionStore::row)
                .list();
    }

    /** Every correction of an election, each envelope's in its order. */
    List<Row> all(ElectionId electionId) {
        return jdbc.sql("""
                        select * from envelope_correction where election_id = ?
                        order by envelope_no, correction_no""").param(electionId).query(CorrectionStore::row).list();
    }

    private static Row row(ResultSet row, int number) throws SQLException {
        return new Row(
                new EnvelopeNumber(row.getString("envelope_no")),
                row.getInt("correction_no"),
                texts(row.getString("was")),
                texts(row.getString("became")),
                row.getString("because"),
                new UserName(row.getString("corrected_by")));
    }

    private static Map<String, String> texts(String json) {
        try {
            Map<String, String> texts = new LinkedHashMap<>();
            LedgerJsonReader.object(json).forEach((box, text) -> texts.put(box, text.toString()));
            return texts;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
