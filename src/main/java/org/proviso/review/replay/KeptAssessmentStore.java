package org.proviso.review.replay;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.review.assess.KeptRow;
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
                        select a.* from assessment a
                        where a.election_id = ? and a.envelope_no between ? and ?
                        order by a.envelope_no, a.assessment_no, a.way""").params(electionId, first, last).query(KeptRow.class).list().stream()
                .map(StoredAssessment::of)
                .toList();
    }
}
