package org.proviso.review.replay;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.UserName;
import org.proviso.core.VoterId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The tables of cases as they are read to compare them with the ledger: some cases at a time, a row as texts. */
@Repository
class CaseReplayStore {

    /** The row of a case; the voter id is that of its person, where that is one of the roll. */
    record CaseRow(
            EnvelopeNumber envelopeNo,
            String state,
            int version,
            @Nullable String personId,
            @Nullable VoterId voterId,
            @Nullable String countedPerson,
            @Nullable UserName takenBy) {}

    private final JdbcClient jdbc;

    CaseReplayStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Up to {@code limit} cases that follow this envelope; from the first with "". */
    List<CaseRow> casesAfter(ElectionId electionId, @Nullable EnvelopeNumber envelopeNo, int limit) {
        return jdbc.sql("""
                        select c.envelope_no, c.state, c.version, c.person_id, p.voter_id, c.counted_person, c.taken_by
                        from envelope_case c
                        left join person p on p.election_id = c.election_id and p.person_id = c.person_id
                        where c.election_id = ? and c.envelope_no > ?
                        order by c.envelope_no limit ?""")
                .params(electionId, Objects.requireNonNullElse(Key.text(envelopeNo), ""), limit)
                .query(CaseRow.class)
                .list();
    }

    /** The rows of the cases from the first number to the last, by envelope number, in the order of their entries. */
    Map<EnvelopeNumber, List<Map<String, String>>> rows(
            CaseTable table, ElectionId electionId, EnvelopeNumber first, EnvelopeNumber last) {
        Map<EnvelopeNumber, List<Map<String, String>>> rows = new LinkedHashMap<>();
        jdbc.sql("select * from " + table.table() + " where election_id = ? and envelope_no between ? and ? and "
                        + table.which() + " order by envelope_no, " + table.order())
                .params(electionId, first, last)
                .query((ResultSet row) -> {
                    rows.computeIfAbsent(new EnvelopeNumber(row.getString("envelope_no")), any -> new ArrayList<>())
                            .add(texts(table, row));
                });
        return rows;
    }

    /**
     * Envelopes that were matched again although a person had confirmed who the voter is, other than by a correction, which
     * says so and has its entry; where a search had found nobody, a newer roll may name one.
     */
    List<String> matchedAfterSettled(ElectionId electionId) {
        return jdbc.sql("""
                        select distinct later.envelope_no from link later
                        join link settled on settled.election_id = later.election_id
                            and settled.envelope_no = later.envelope_no and settled.link_no < later.link_no
                        where later.election_id = ? and later.linked_by is null and settled.linked_by is not null
                            and settled.identity = 'confirmed' and later.ground = ''
                            and settled.link_no > (select coalesce(max(back.link_no), 0) from link back
                                where back.election_id = later.election_id and back.envelope_no = later.envelope_no
                                    and back.link_no < later.link_no and back.linked_by is null and back.ground <> '')
                        order by 1""").param(electionId).query(String.class).list();
    }

    private static Map<String, String> texts(CaseTable table, ResultSet row) throws SQLException {
        Map<String, String> texts = new LinkedHashMap<>();
        for (CaseColumn column : table.columns()) {
            texts.put(column.name(), text(column, row));
        }
        return texts;
    }

    private static String text(CaseColumn column, ResultSet row) throws SQLException {
        String name = column.name();
        return switch (column.kind()) {
            case YES_NO -> String.valueOf(row.getBoolean(name));
            case GIVEN -> row.getString(name) == null ? "" : "yes";
            case STAMP -> stamp(row.getObject(name, LocalDateTime.class));
            default -> Objects.requireNonNullElse(row.getString(name), "");
        };
    }

    private static String stamp(@Nullable LocalDateTime at) {
        return at == null ? "" : at.truncatedTo(ChronoUnit.SECONDS).toString();
    }
}
