package org.proviso.board;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of sessions. */
@Repository
public class SessionStore {

    private final JdbcClient jdbc;

    SessionStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    BoardSession insert(CallSession called, int quorum, boolean ahead) {
        SessionKey key = new SessionKey(called.electionId(), next(called.electionId()));
        try {
            jdbc.sql("""
                            insert into board_session (election_id, session_no, body, called_for, place, quorum,
                                version, called_ahead)
                            values (?, ?, ?, ?, ?, ?, 0, ?)""")
                    .params(
                            key.electionId(),
                            key.sessionNo(),
                            called.body().code(),
                            called.calledFor(),
                            called.place(),
                            quorum,
                            ahead)
                    .update();
        } catch (DuplicateKeyException e) {
            throw new OptimisticLockingFailureException("Another session was called at the same moment.", e);
        }
        return new BoardSession(key, called.body(), called.calledFor(), called.place(), quorum, null, null, 0, ahead);
    }

    private int next(ElectionId electionId) {
        return jdbc.sql("select coalesce(max(session_no), 0) + 1 from board_session where election_id = ?")
                .param(electionId)
                .query(Integer.class)
                .single();
    }

    public List<BoardSession> all(ElectionId electionId) {
        return select(electionId, "");
    }

    public Optional<BoardSession> find(SessionKey key) {
        return jdbc.sql("select * from board_session where election_id = ? and session_no = ?")
                .params(key.electionId(), key.sessionNo())
                .query(BoardSession.class)
                .optional();
    }

    /** The session, held until the transaction ends; others who act in it wait. */
    public BoardSession lock(SessionKey key) {
        return jdbc.sql("select * from board_session where election_id = ? and session_no = ? for update")
                .params(key.electionId(), key.sessionNo())
                .query(BoardSession.class)
                .optional()
                .orElseThrow(() -> unknown(key));
    }

    /** Every session of the election, held in their order: for what two sessions must not do at once. */
    public List<BoardSession> lockAll(ElectionId electionId) {
        return select(electionId, " for update");
    }

    /** One session, held after every other one of its election. */
    public BoardSession lockedAmongAll(SessionKey key) {
        return lockAll(key.electionId()).stream()
                .filter(session -> session.key().equals(key))
                .findFirst()
                .orElseThrow(() -> unknown(key));
    }

    private List<BoardSession> select(ElectionId electionId, String held) {
        return jdbc.sql("select * from board_session where election_id = ? order by session_no" + held)
                .param(electionId)
                .query(BoardSession.class)
                .list();
    }

    public static IllegalArgumentException unknown(SessionKey key) {
        return new IllegalArgumentException("There is no session " + key.sessionNo() + " in " + key.electionId() + ".");
    }

    /** Opens a session that is held. */
    void open(SessionKey key, OffsetDateTime at) {
        moved(key, "opened_at", at);
    }

    /** Closes a session that is held. */
    void close(SessionKey key, OffsetDateTime at) {
        moved(key, "closed_at", at);
    }

    /** Reopens a closed session that is held; when it had been closed stays with the reason. */
    void reopen(BoardSession session, String because, UserName by, OffsetDateTime at) {
        SessionKey key = session.key();
        jdbc.sql("""
                        insert into session_reopening (election_id, session_no, reopening_no, closed_at, because,
                            reopened_by, reopened_at)
                        values (:electionId, :sessionNo, :number, :closedAt, :because, :by, :at)""")
                .param("electionId", key.electionId())
                .param("sessionNo", key.sessionNo())
                .param("number", reopenings(key).size() + 1)
                .param("closedAt", session.closedAt())
                .param("because", because)
                .param("by", by)
                .param("at", at)
                .update();
        moved(key, "closed_at", null);
    }

    /** How often a session was reopened, the first time first. */
    public List<SessionReopening> reopenings(SessionKey key) {
        return jdbc.sql("""
                        select closed_at, because, reopened_by, reopened_at from session_reopening
                        where election_id = ? and session_no = ? order by reopening_no""")
                .params(key.electionId(), key.sessionNo())
                .query(SessionReopening.class)
                .list();
    }

    /** Calls a session that is held for another time or place. */
    void callAgain(MoveSession to) {
        jdbc.sql("update board_session set called_for = ?, place = ?, version = version + 1"
                        + " where election_id = ? and session_no = ?")
                .params(
                        to.calledFor(),
                        to.place(),
                        to.session().electionId(),
                        to.session().sessionNo())
                .update();
    }

    private void moved(SessionKey key, String column, @Nullable OffsetDateTime at) {
        jdbc.sql("update board_session set " + column
                        + " = ?, version = version + 1 where election_id = ? and session_no = ?")
                .params(at, key.electionId(), key.sessionNo())
                .update();
    }
}
