package org.proviso.intake;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.UserName;
import org.proviso.core.adjudication.finding.CureEvidence;
import org.proviso.core.rules.Ask;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of what voters brought after election day. */
@Repository
public class CureStore {

    /** What a voter brought as its row has it. */
    public record CureRow(
            EnvelopeNumber envelopeNo,
            int number,
            String ask,
            LocalDateTime receivedAt,
            String recordedBy,
            String words) {}

    private final JdbcClient jdbc;

    CureStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Adds what was brought, under the next number of its envelope, whose row the caller has locked. */
    public void insert(RecordCure cure, UserName userName, Instant now) {
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

    List<CureEvidence> of(ElectionId electionId, EnvelopeNumber envelopeNo, ZoneId county) {
        return of(electionId, List.of(envelopeNo), county).getOrDefault(envelopeNo, List.of());
    }

    /** The same of several envelopes, by envelope number. */
    Map<EnvelopeNumber, List<CureEvidence>> of(
            ElectionId electionId, Collection<EnvelopeNumber> envelopeNos, ZoneId county) {
        Map<EnvelopeNumber, List<CureEvidence>> found = new HashMap<>();
        jdbc.sql("""
                        select c.* from unnest(cast(? as varchar array)) as wanted (id)
                        join cure_evidence c on c.election_id = ? and c.envelope_no = wanted.id order by c.cure_no""")
                .param(envelopeNos.stream().map(Key::value).toArray(String[]::new))
                .param(electionId)
                .query((ResultSet row) -> {
                    found.computeIfAbsent(new EnvelopeNumber(row.getString("envelope_no")), any -> new ArrayList<>())
                            .add(evidence(row, county));
                });
        return found;
    }

    private static CureEvidence evidence(ResultSet row, ZoneId county) throws SQLException {
        return new CureEvidence(
                Code.find(Ask.class, row.getString("ask")).orElseThrow(),
                row.getObject("received_at", LocalDateTime.class),
                row.getObject("recorded_at", OffsetDateTime.class)
                        .atZoneSameInstant(county)
                        .toLocalDateTime(),
                row.getString("words"));
    }

    /** Every row of an election. */
    public List<CureRow> rows(ElectionId electionId) {
        return jdbc.sql("""
                        select envelope_no, cure_no as number, ask, received_at, recorded_by, words from cure_evidence
                        where election_id = ? order by envelope_no, cure_no""").param(electionId).query(CureRow.class).list();
    }
}
