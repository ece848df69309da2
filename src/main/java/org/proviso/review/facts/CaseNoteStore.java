package org.proviso.review.facts;

import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of notes on cases; rows are added, never changed. */
@Repository
public class CaseNoteStore {

    private final JdbcClient jdbc;
    private final Clock clock;

    CaseNoteStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** The number of the note that was added. */
    public int insert(EnvelopeKey key, String words, @Nullable Integer corrects, UserName by) {
        int number = of(key).size() + 1;
        jdbc.sql("""
                        insert into case_note (election_id, envelope_no, note_no, words, corrects, written_by, written_at)
                        values (:electionId, :envelopeNo, :number, :words, :corrects, :by, :at)""")
                .param("electionId", key.electionId())
                .param("envelopeNo", key.envelopeNo())
                .param("number", number)
                .param("words", words)
                .param("corrects", corrects)
                .param("by", by)
                .param("at", clock.instant())
                .update();
        return number;
    }

    /** Every note on the case, the oldest first. */
    public List<CaseNote> of(EnvelopeKey key) {
        return jdbc.sql("""
                        select n.note_no as number, n.words, n.corrects, n.written_by, u.full_name, n.written_at,
                            exists (select 1 from case_note c where c.election_id = n.election_id
                                and c.envelope_no = n.envelope_no and c.corrects = n.note_no) as corrected
                        from case_note n join office_user u on u.user_name = n.written_by
                        where n.election_id = ? and n.envelope_no = ? order by n.note_no""")
                .params(key.electionId(), key.envelopeNo())
                .query(CaseNote.class)
                .list();
    }
}
