package org.proviso.status;

import java.util.List;
import org.proviso.core.ElectionId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The look-up's own table of sessions. */
@Repository
class StatusSessionStore {

    private final JdbcClient jdbc;

    StatusSessionStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Puts a session in the place of what was known of it; the board holds it by then. */
    void put(StatusSession session) {
        jdbc.sql("delete from status_session where election_id = ? and session_no = ?")
                .params(session.electionId(), session.sessionNo())
                .update();
        jdbc.sql("""
                        insert into status_session (election_id, session_no, body, called_for, opened, closed)
                        values (?, ?, ?, ?, ?, ?)""")
                .params(
                        session.electionId(),
                        session.sessionNo(),
                        session.body().code(),
                        session.calledFor(),
                        session.opened(),
                        session.closed())
                .update();
    }

    List<StatusSession> all(ElectionId electionId) {
        return jdbc.sql("select * from status_session where election_id = ? order by session_no")
                .param(electionId)
                .query(StatusSession.class)
                .list();
    }

    void empty(ElectionId electionId) {
        jdbc.sql("delete from status_session where election_id = ?")
                .param(electionId)
                .update();
    }
}
