package org.proviso.board;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The tables of who came to a session and who is recused from what. */
@Repository
public class MemberStore {

    private final JdbcClient jdbc;

    MemberStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    public List<SessionMember> all(SessionKey key) {
        return jdbc.sql("""
                        select * from session_member where election_id = ? and session_no = ?
                        order by arrived_at, user_name""")
                .params(key.electionId(), key.sessionNo())
                .query(SessionMember.class)
                .list();
    }

    /** The user names of those who are there now. */
    public Set<UserName> present(SessionKey key) {
        Set<UserName> present = new LinkedHashSet<>();
        all(key).stream().filter(SessionMember::isThere).forEach(member -> present.add(member.userName()));
        return present;
    }

    /** The sessions of the election in which somebody is there now. */
    public List<Integer> sessionsWith(ElectionId electionId, UserName userName) {
        return jdbc.sql("""
                        select session_no from session_member
                        where election_id = ? and user_name = ? and left_at is null order by session_no""").params(electionId, userName).query(Integer.class).list();
    }

    /** Whether somebody sat in any session of that body. */
    boolean satOn(ElectionId electionId, BodyKind body, UserName userName) {
        return jdbc.sql("""
                        select count(*) from session_member m
                        join board_session s on s.election_id = m.election_id and s.session_no = m.session_no
                        where m.election_id = ? and m.user_name = ? and s.body = ?""")
                        .params(electionId, userName, body.code())
                        .query(Integer.class)
                        .single()
                > 0;
    }

    void arrive(SessionKey key, UserName userName, OffsetDateTime at) {
        jdbc.sql("""
                        insert into session_member (election_id, session_no, user_name, arrived_at)
                        values (?, ?, ?, ?)""").params(key.electionId(), key.sessionNo(), userName, at).update();
    }

    void leave(SessionKey key, UserName userName, OffsetDateTime at) {
        jdbc.sql("""
                        update session_member set left_at = ?
                        where election_id = ? and session_no = ? and user_name = ? and left_at is null""").params(at, key.electionId(), key.sessionNo(), userName).update();
    }

    void allLeave(SessionKey key, OffsetDateTime at) {
        jdbc.sql("""
                        update session_member set left_at = ?
                        where election_id = ? and session_no = ? and left_at is null""").params(at, key.electionId(), key.sessionNo()).update();
    }

    /** Who keeps the record of a session without sitting in it, and from when on. */
    public record RecordKeeper(UserName userName, Instant beganAt) {}

    public List<RecordKeeper> keepers(SessionKey key) {
        return jdbc.sql("""
                        select user_name, began_at from record_keeper where election_id = ? and session_no = ?
                        order by began_at, user_name""")
                .params(key.electionId(), key.sessionNo())
                .query(RecordKeeper.class)
                .list();
    }

    public boolean keeps(SessionKey key, UserName userName) {
        return keepers(key).stream().anyMatch(keeper -> keeper.userName().equals(userName));
    }

    public void keep(SessionKey key, UserName userName, OffsetDateTime at) {
        jdbc.sql("insert into record_keeper (election_id, session_no, user_name, began_at) values (?, ?, ?, ?)")
                .params(key.electionId(), key.sessionNo(), userName, at)
                .update();
    }

    void recuse(RecordRecusal recusal, OffsetDateTime at) {
        SessionKey key = recusal.session();
        jdbc.sql("""
                        insert into recusal (election_id, session_no, envelope_no, user_name, ground, recorded_at)
                        values (?, ?, ?, ?, ?, ?)""")
                .params(
                        key.electionId(),
                        key.sessionNo(),
                        recusal.envelopeNo(),
                        recusal.userName(),
                        recusal.ground(),
                        at)
                .update();
    }

    public List<Recusal> recusals(SessionKey key) {
        return jdbc.sql("""
                        select * from recusal where election_id = ? and session_no = ?
                        order by recorded_at, envelope_no, user_name""")
                .params(key.electionId(), key.sessionNo())
                .query(Recusal.class)
                .list();
    }

    /** The envelopes that each recused member is recused from. */
    public Map<UserName, Set<EnvelopeNumber>> recused(SessionKey key) {
        Map<UserName, Set<EnvelopeNumber>> recused = new LinkedHashMap<>();
        recusals(key)
                .forEach(recusal -> recused.computeIfAbsent(recusal.userName(), any -> new LinkedHashSet<>())
                        .add(recusal.envelopeNo()));
        return recused;
    }
}
