package org.proviso.review.facts;

import java.time.Clock;
import java.time.Instant;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of who was shown that a reviewer found a signature different, before looking at it. */
@Repository
public class FindingSeenStore {

    private record Row(EnvelopeKey key, int answer, UserName by, Instant at) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    FindingSeenStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** Whether that answer of the case was shown to that person. */
    public boolean isSeen(EnvelopeKey key, int answer, UserName by) {
        return jdbc.sql("""
                        select count(*) from signature_finding_seen
                        where election_id = ? and envelope_no = ? and answer_no = ? and seen_by = ?""")
                        .params(key.electionId(), key.envelopeNo(), answer, by)
                        .query(Integer.class)
                        .single()
                > 0;
    }

    /** Notes it under the next number of the case, which is locked. */
    public void insert(EnvelopeKey key, int answer, UserName by) {
        jdbc.sql("""
                        insert into signature_finding_seen (election_id, envelope_no, seen_no, answer_no, seen_by, seen_at)
                        select :key.electionId, :key.envelopeNo, coalesce(max(seen_no), 0) + 1, :answer, :by, :at
                        from signature_finding_seen
                        where election_id = :key.electionId and envelope_no = :key.envelopeNo""").paramSource(new Row(key, answer, by, clock.instant())).update();
    }
}
