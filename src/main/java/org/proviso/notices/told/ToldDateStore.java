package org.proviso.notices.told;

import java.time.LocalDateTime;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.rules.Ask;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads from the log of notices until when voters were told that they have time. */
@Repository
class ToldDateStore {

    /** What the newest notice of an ask gave as its date. */
    record Told(EnvelopeKey key, int noticeNo, Ask ask, LocalDateTime toldUntil) {}

    private final JdbcClient jdbc;

    ToldDateStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The newest notice of each ask that went out, where it gave a date; by envelope number. */
    List<Told> newest(ElectionId electionId) {
        return jdbc.sql("""
                        select n.election_id, n.envelope_no, n.notice_no, n.ask, a.told_until
                        from notice n join notice_attempt a on a.election_id = n.election_id
                            and a.envelope_no = n.envelope_no and a.notice_no = n.notice_no
                        where n.election_id = ? and n.ask is not null and a.told_until is not null
                            and a.taken_back_at is null
                            and a.attempt_no = (select max(b.attempt_no) from notice_attempt b
                                where b.election_id = n.election_id and b.envelope_no = n.envelope_no
                                    and b.notice_no = n.notice_no and b.taken_back_at is null)
                        order by n.envelope_no, n.notice_no""").param(electionId).query(Told.class).list();
    }
}
