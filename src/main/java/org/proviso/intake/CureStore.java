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
import org.jspecify.annotations.Nullable;
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

    /** What a voter brought as its row has it, and who took it back and why, null where nobody did. */
    public record CureRow(
            EnvelopeNumber envelopeNo,
            int number,
            String ask,
            LocalDateTime receivedAt,
            String recordedBy,
            String words,
            @Nullable UserName takenBackBy,
            @Nullable String because) {

        public boolean isTakenBack() {
            return takenBackBy != null;
        }
    }

    private static final String ROWS = """
            select c.envelope_no, c.cure_no as number, c.ask, c.received_at, c.recorded_by, c.words, t.taken_back_by,
                t.because
            from cure_evidence c left join cure_taken_back t on t.election_id = c.election_id
                and t.envelope_no = c.envelope_no and t.cure_no = c.cure_no
            where c.election_id = ?""";

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

    /** It stays readable and counts no more. */
    public void takeBack(ElectionId electionId, CureRow row, UserName by, String because, Instant now) {
        jdbc.sql("""
                        insert into cure_taken_back (election_id, envelope_no, cure_no, because, taken_back_by, taken_back_at)
                        values (?, ?, ?, ?, ?, ?)""")
                .params(
                        electionId,
                        row.envelopeNo(),
                        row.number(),
                        because,
                        by,
                        OffsetDateTime.ofInstant(now, ZoneOffset.UTC))
                .update();
    }

    /** What counts of an envelope, in the order in which it was keyed. */
    List<CureEvidence> of(ElectionId electionId, EnvelopeNumber envelopeNo, ZoneId county) {
        return of(electionId, List.of(envelopeNo), county).getOrDefault(envelopeNo, List.of());
    }

    /** The same of several envelopes, by envelope number. */
    Map<EnvelopeNumber, List<CureEvidence>> of(
            ElectionId electionId, Collection<EnvelopeNumber> envelopeNos, ZoneId county) {
        Map<EnvelopeNumber, List<CureEvidence>> found = new HashMap<>();
        jdbc.sql("""
                        select c.* from unnest(cast(? as varchar array)) as wanted (id)
                        join cure_evidence c on c.election_id = ? and c.envelope_no = wanted.id
                        where not exists (select 1 from cure_taken_back t where t.election_id = c.election_id
                            and t.envelope_no = c.envelope_no and t.cure_no = c.cure_no)
                        order by c.cure_no""")
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

    /** Every row of an election, what was taken back too. */
    public List<CureRow> rows(ElectionId electionId) {
        return jdbc.sql(ROWS + " order by c.envelope_no, c.cure_no")
                .param(electionId)
                .query(CureRow.class)
                .list();
    }

    /** The same of one envelope. */
    public List<CureRow> rows(ElectionId electionId, EnvelopeNumber envelopeNo) {
        return jdbc.sql(ROWS + " and c.envelope_no = ? order by c.cure_no")
                .params(electionId, envelopeNo)
                .query(CureRow.class)
                .list();
    }
}
