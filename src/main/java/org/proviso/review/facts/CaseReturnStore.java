package org.proviso.review.facts;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of why cases came back to the reviewers. */
@Repository
public class CaseReturnStore {

    private final JdbcClient jdbc;
    private final Clock clock;

    CaseReturnStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** Keeps that a case came back. */
    public void note(EnvelopeKey key, CaseReturn.Kind kind, String because, @Nullable UserName by) {
        int number = jdbc.sql("""
                        select coalesce(max(return_no), 0) + 1 from case_return
                        where election_id = ? and envelope_no = ?""")
                .params(key.electionId(), key.envelopeNo())
                .query(Integer.class)
                .single();
        jdbc.sql("""
                        insert into case_return (election_id, envelope_no, return_no, kind, because, returned_by,
                            returned_at)
                        values (:electionId, :envelopeNo, :number, :kind, :because, :by, :at)""")
                .param("electionId", key.electionId())
                .param("envelopeNo", key.envelopeNo())
                .param("number", number)
                .param("kind", kind)
                .param("because", because)
                .param("by", by)
                .param("at", clock.instant())
                .update();
    }

    /** A case that came back, with its envelope. */
    public record ReturnedCase(
            EnvelopeNumber envelopeNo,
            String because,
            @Nullable UserName returnedBy,
            Instant returnedAt) {}

    /** Every case of an election that came back in that way, in their order. */
    public List<ReturnedCase> all(ElectionId electionId, CaseReturn.Kind kind) {
        return jdbc.sql("""
                        select envelope_no, because, returned_by, returned_at from case_return
                        where election_id = ? and kind = ? order by returned_at, envelope_no, return_no""").params(electionId, kind).query(ReturnedCase.class).list();
    }
}
