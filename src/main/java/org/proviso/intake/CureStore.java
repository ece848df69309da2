package org.proviso.intake;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import org.proviso.core.Code;
import org.proviso.core.adjudication.finding.CureEvidence;
import org.proviso.core.rules.Ask;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of what voters brought after election day. */
@Repository
public class CureStore {

    /** What a voter brought as its row has it. */
    public record CureRow(
            String envelopeNo, int number, String ask, LocalDateTime receivedAt, String recordedBy, String words) {}

    private final JdbcClient jdbc;

    CureStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Adds what was brought, under the next number of its envelope, whose row the caller has locked. */
    public void insert(RecordCure cure, String userName, Instant now) {
        jdbc.sql("""
                        insert into cure_evidence (election_id, envelope_no, cure_no, ask, received_at, recorded_at,
                            recorded_by, words)
                        values (?, ?, (select coalesce(max(cure_no), 0) + 1 from cure_evidence
                            where election_id = ? and envelope_no = ?), ?, ?, ?, ?, ?)""")
                .params(
                        cure.electionId(),
                        cure.envelopeNo(),
                        cure.electionId(),
                        cure.envelopeNo(),
                        cure.ask().code(),
                        cure.receivedAt(),
                        OffsetDateTime.ofInstant(now, ZoneOffset.UTC),
                        userName,
                        cure.words())
                .update();
    }

    List<CureEvidence> of(String electionId, String envelopeNo, ZoneId county) {
        return jdbc.sql("select * from cure_evidence where election_id = ? and envelope_no = ? order by cure_no")
                .params(electionId, envelopeNo)
                .query((row, number) -> new CureEvidence(
                        Code.find(Ask.class, row.getString("ask")).orElseThrow(),
                        row.getObject("received_at", LocalDateTime.class),
                        row.getObject("recorded_at", OffsetDateTime.class)
                                .atZoneSameInstant(county)
                                .toLocalDateTime(),
                        row.getString("words")))
                .list();
    }

    /** Every row of an election. */
    public List<CureRow> rows(String electionId) {
        return jdbc.sql("""
                        select envelope_no, cure_no as number, ask, received_at, recorded_by, words from cure_evidence
                        where election_id = ? order by envelope_no, cure_no""").param(electionId).query(CureRow.class).list();
    }
}
