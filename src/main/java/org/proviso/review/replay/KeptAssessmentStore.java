package org.proviso.review.replay;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.adjudication.kept.AssessmentKind;
import org.proviso.core.adjudication.kept.AssessmentOrigins;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of assessments as it is read to make them again: all of them, some cases at a time. */
@Repository
public class KeptAssessmentStore {

    private final JdbcClient jdbc;

    KeptAssessmentStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The numbers of up to {@code limit} envelopes with a case that follow this one; from the first with "". */
    List<EnvelopeNumber> envelopesAfter(ElectionId electionId, @Nullable EnvelopeNumber envelopeNo, int limit) {
        return jdbc.sql("""
                        select envelope_no from envelope_case where election_id = ? and envelope_no > ?
                        order by envelope_no limit ?""")
                .params(electionId, Objects.requireNonNullElse(Key.text(envelopeNo), ""), limit)
                .query(EnvelopeNumber.class)
                .list();
    }

    /** Every way of every assessment of the envelopes from the first number to the last, in their order. */
    public List<StoredAssessment> between(ElectionId electionId, String first, String last) {
        return jdbc.sql("""
                        select * from assessment where election_id = ? and envelope_no between ? and ?
                        order by envelope_no, assessment_no, way""")
                .params(electionId, first, last)
                .query(KeptAssessmentStore::stored)
                .list();
    }

    private static StoredAssessment stored(ResultSet row, int number) throws SQLException {
        return new StoredAssessment(
                new EnvelopeNumber(row.getString("envelope_no")),
                row.getInt("assessment_no"),
                new AssessmentOrigins(
                        Code.find(AssessmentKind.class, row.getString("way")).orElseThrow(),
                        row.getString("facts"),
                        row.getObject("as_of", LocalDateTime.class),
                        row.getString("pack_hash"),
                        row.getInt("engine_version")),
                row.getString("recommendation"),
                row.getString("reasons"),
                row.getBoolean("held_apart"),
                row.getString("content"));
    }
}
