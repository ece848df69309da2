package org.proviso.board;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.deciding.CountAgainstRules;
import org.proviso.core.deciding.MotionResult;
import org.proviso.core.rules.Reason;
import org.springframework.jdbc.core.namedparam.NamedParameterJdbcOperations;
import org.springframework.jdbc.core.namedparam.SqlParameterSourceUtils;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The tables of motions and of the envelopes they are about. Whoever writes holds the session. */
@Repository
public class MotionStore {

    private static final String SELECT = """
            select m.election_id, m.session_no, m.motion_no, m.outcome as kind, m.contests, m.reasons,
                m.legal_reference, coalesce(m.departs_because, '') as because, m.moved_by, m.seconded_by, m.recorded_by,
                m.second_recorded_by, m.moved_at, m.put_at, m.result as "end", m.result_at as ended_at, m.words, m.joined_session, m.joined_motion,
                m.version
            from motion m
            """;

    private static final String OF_SESSION = SELECT + "where m.election_id = ? and m.session_no = ? ";

    /** A motion as its row has it: the other body's that it was read with by its numbers, its envelopes elsewhere. */
    private record Stored(
            MotionKey key,
            MotionKind kind,
            Set<String> contests,
            List<Reason> reasons,
            String legalReference,
            String because,
            UserName movedBy,
            @Nullable UserName secondedBy,
            @Nullable UserName recordedBy,
            @Nullable UserName secondRecordedBy,
            Instant movedAt,
            @Nullable Instant putAt,
            @Nullable MotionResult end,
            @Nullable Instant endedAt,
            @Nullable String words,
            @Nullable Integer joinedSession,
            @Nullable Integer joinedMotion,
            int version) {}

    /** A motion with its lists as their columns have them. */
    private record Row(
            MotionKey key,
            MoveMotion moved,
            String contests,
            String reasons,
            UserName by,
            @Nullable UserName recordedBy,
            OffsetDateTime at) {}

    /** An envelope that a motion is about, with the version of its case, and what it goes against. */
    private record EnvelopeRow(
            MotionKey key,
            EnvelopeNumber envelopeNo,
            int caseVersion,
            @Nullable Recommendation rulesSay,
            boolean knownToHaveVoted) {}

    private final JdbcClient jdbc;
    private final NamedParameterJdbcOperations batches;

    MotionStore(JdbcClient jdbc, NamedParameterJdbcOperations batches) {
        this.jdbc = jdbc;
        this.batches = batches;
    }

    public MotionKey insert(
            MoveMotion moved,
            Map<EnvelopeNumber, CountAgainstRules> against,
            UserName by,
            @Nullable UserName recordedBy,
            OffsetDateTime at) {
        SessionKey session = moved.session();
        MotionKey key = new MotionKey(session, all(session).size() + 1);
        jdbc.sql("""
                        insert into motion (election_id, session_no, motion_no, outcome, contests, reasons, legal_reference,
                            departs_because, moved_by, recorded_by, moved_at, version)
                        values (:key.session.electionId, :key.session.sessionNo, :key.motionNo, :moved.kind, :contests,
                            :reasons, :moved.legalReference, :moved.because, :by, :recordedBy, :at, 0)""")
                .paramSource(new Row(
                        key,
                        moved,
                        String.join(";", new TreeSet<>(moved.contests())),
                        moved.reasons().stream().map(Code::code).collect(Collectors.joining(";")),
                        by,
                        recordedBy,
                        at))
                .update();
        insert(key, new TreeMap<>(moved.envelopes()), against);
        return key;
    }

    private void insert(
            MotionKey key,
            SortedMap<EnvelopeNumber, Integer> caseVersions,
            Map<EnvelopeNumber, CountAgainstRules> against) {
        List<EnvelopeRow> rows = caseVersions.entrySet().stream()
                .map(envelope -> {
                    Optional<CountAgainstRules> rules = Optional.ofNullable(against.get(envelope.getKey()));
                    return new EnvelopeRow(
                            key,
                            envelope.getKey(),
                            envelope.getValue(),
                            rules.map(CountAgainstRules::rulesSay).orElse(null),
                            rules.map(CountAgainstRules::knownToHaveVoted).orElse(false));
                })
                .toList();
        batches.batchUpdate("""
                insert into motion_envelope (election_id, session_no, motion_no, envelope_no, case_version, pulled_out,
                    rules_say, known_to_have_voted)
                values (:key.session.electionId, :key.session.sessionNo, :key.motionNo, :envelopeNo, :caseVersion,
                    false, :rulesSay, :knownToHaveVoted)""", SqlParameterSourceUtils.createBatch(rows));
    }

    public List<BoardMotion> all(SessionKey key) {
        return jdbc
                .sql(OF_SESSION + "order by m.motion_no")
                .params(key.electionId(), key.sessionNo())
                .query(Stored.class)
                .list()
                .stream()
                .map(this::motion)
                .toList();
    }

    public Optional<BoardMotion> find(MotionKey key) {
        return jdbc.sql(OF_SESSION + "and m.motion_no = ?")
                .params(key.session().electionId(), key.session().sessionNo(), key.motionNo())
                .query(Stored.class)
                .optional()
                .map(this::motion);
    }

    /** The motion before a session, if there is one. */
    public Optional<BoardMotion> pending(SessionKey key) {
        return jdbc.sql(OF_SESSION + "and m.result is null")
                .params(key.electionId(), key.sessionNo())
                .query(Stored.class)
                .optional()
                .map(this::motion);
    }

    /** Another number after each act on a motion of a session, and after each vote. */
    public long version(SessionKey key) {
        return jdbc.sql(
                        "select count(*) + coalesce(sum(version), 0) from motion where election_id = ? and session_no = ?")
                .params(key.electionId(), key.sessionNo())
                .query(Long.class)
                .single();
    }

    /** Motions that a body voted on and that were not read with one of the other body's, the newest vote first. */
    public List<BoardMotion> waiting(ElectionId electionId, BodyKind body) {
        return jdbc.sql(SELECT + """
                        join board_session s on s.election_id = m.election_id and s.session_no = m.session_no
                        where m.election_id = ? and s.body = ? and m.result in ('carried', 'failed', 'tied')
                          and m.joined_motion is null and m.outcome <> 'table'
                        order by m.result_at desc, m.session_no desc, m.motion_no desc""").params(electionId, body.code()).query(Stored.class).list().stream()
                .map(this::motion)
                .toList();
    }

    public void second(MotionKey key, UserName by) {
        set(key, ", seconded_by = ?", by);
    }

    /** A second that a member said aloud. */
    public void second(MotionKey key, UserName by, UserName recordedBy) {
        set(key, ", seconded_by = ?, second_recorded_by = ?", by, recordedBy);
    }

    public void put(MotionKey key, OffsetDateTime at) {
        set(key, ", put_at = ?", at);
    }

    public void touch(MotionKey key) {
        set(key, "");
    }

    public void end(MotionKey key, MotionResult end, OffsetDateTime at, String words) {
        set(key, ", result = ?, result_at = ?, words = ?", end.code(), at, words);
    }

    /** Marks two bodies' motions as read together. */
    public void join(MotionKey motion, MotionKey other) {
        set(motion, ", joined_session = ?, joined_motion = ?", other.session().sessionNo(), other.motionNo());
        set(other, ", joined_session = ?, joined_motion = ?", motion.session().sessionNo(), motion.motionNo());
    }

    public void pullOut(MotionKey key, EnvelopeNumber envelopeNo) {
        int pulled = jdbc.sql("""
                        update motion_envelope set pulled_out = true
                        where election_id = ? and session_no = ? and motion_no = ? and envelope_no = ?""")
                .params(key.session().electionId(), key.session().sessionNo(), key.motionNo(), envelopeNo)
                .update();
        if (pulled > 0) {
            touch(key);
        }
    }

    private void set(MotionKey key, String assignments, Object... values) {
        jdbc.sql("update motion set version = version + 1" + assignments
                        + " where election_id = ? and session_no = ? and motion_no = ?")
                .params(List.of(values))
                .param(key.session().electionId())
                .param(key.session().sessionNo())
                .param(key.motionNo())
                .update();
    }

    private List<MotionEnvelope> envelopes(MotionKey key) {
        return jdbc.sql("""
                        select * from motion_envelope where election_id = ? and session_no = ? and motion_no = ?
                        order by envelope_no""")
                .params(key.session().electionId(), key.session().sessionNo(), key.motionNo())
                .query(MotionEnvelope.class)
                .list();
    }

    private BoardMotion motion(Stored stored) {
        return new BoardMotion(
                stored.key(),
                stored.kind(),
                envelopes(stored.key()),
                stored.contests(),
                stored.reasons(),
                stored.legalReference(),
                stored.because(),
                stored.movedBy(),
                stored.secondedBy(),
                stored.recordedBy(),
                stored.secondRecordedBy(),
                stored.movedAt(),
                stored.putAt(),
                stored.end(),
                stored.endedAt(),
                stored.words(),
                joined(stored),
                stored.version());
    }

    private static @Nullable MotionKey joined(Stored stored) {
        return stored.joinedSession() == null || stored.joinedMotion() == null
                ? null
                : new MotionKey(
                        new SessionKey(stored.key().session().electionId(), stored.joinedSession()),
                        stored.joinedMotion());
    }
}
