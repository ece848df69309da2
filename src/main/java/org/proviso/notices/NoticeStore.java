package org.proviso.notices;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.judging.DueAsk;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Reason;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of notices. Whoever writes a row holds its case. */
@Repository
class NoticeStore {

    /** A notice that came up: of an ask with its reason, or of an outcome with its decision. */
    private record Row(
            EnvelopeKey key,
            NoticeKind kind,
            @Nullable Ask ask,
            @Nullable Reason reason,
            @Nullable Integer decisionNo,
            LocalDateTime dueAt,
            boolean heldApart,
            Instant foundAt) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    NoticeStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** Every notice of a case, withdrawn ones too, in the order in which they came up. */
    List<Notice> of(EnvelopeKey key) {
        return jdbc.sql("select * from notice where election_id = ? and envelope_no = ? order by notice_no")
                .params(key.electionId(), key.envelopeNo())
                .query(NoticeStore::row)
                .list();
    }

    Optional<Notice> find(EnvelopeKey key, int number) {
        return of(key).stream().filter(notice -> notice.number() == number).findFirst();
    }

    /** Every notice of an election that was not withdrawn, the one due first at the head. */
    List<Notice> standing(ElectionId electionId) {
        return jdbc.sql("""
                        select * from notice where election_id = ? and withdrawn_at is null
                        order by due_at, envelope_no, notice_no""").param(electionId).query(NoticeStore::row).list();
    }

    void insertAsk(EnvelopeKey key, DueAsk due, LocalDateTime dueAt, boolean heldApart) {
        insert(new Row(key, NoticeKind.ASK, due.ask(), due.reason(), null, dueAt, heldApart, clock.instant()));
    }

    void insertOutcome(EnvelopeKey key, int decisionNo, LocalDateTime dueAt, boolean heldApart) {
        insert(new Row(key, NoticeKind.OUTCOME, null, null, decisionNo, dueAt, heldApart, clock.instant()));
    }

    private void insert(Row row) {
        jdbc.sql("""
                        insert into notice (election_id, envelope_no, notice_no, kind, ask, reason, decision_no, due_at,
                            held_apart, found_at, version)
                        select :key.electionId, :key.envelopeNo, coalesce(max(notice_no), 0) + 1, :kind, :ask, :reason,
                            :decisionNo, :dueAt, :heldApart, :foundAt, 0
                        from notice where election_id = :key.electionId and envelope_no = :key.envelopeNo""").paramSource(row).update();
    }

    /** Due again where it was withdrawn, with the reason as it is now. */
    void renew(Notice notice, Reason reason, boolean heldApart) {
        changed(jdbc.sql("""
                        update notice set withdrawn_at = null, reason = ?, held_apart = ?, version = version + 1
                        where election_id = ? and envelope_no = ? and notice_no = ? and version = ?""")
                .params(reason.code(), heldApart)
                .params(place(notice))
                .update());
    }

    void withdraw(Notice notice) {
        changed(jdbc.sql("""
                        update notice set withdrawn_at = ?, version = version + 1
                        where election_id = ? and envelope_no = ? and notice_no = ? and version = ?""").params(clock.instant()).params(place(notice)).update());
    }

    /** The voter was told, at the earliest then: a notice that went out is not withdrawn. */
    void sent(Notice notice, LocalDateTime earliest) {
        changed(jdbc.sql("""
                        update notice set sent_at = ?, withdrawn_at = null, version = version + 1
                        where election_id = ? and envelope_no = ? and notice_no = ? and version = ?""").params(earliest).params(place(notice)).update());
    }

    private static List<Object> place(Notice notice) {
        return List.of(
                notice.key().electionId().value(),
                notice.key().envelopeNo().value(),
                notice.number(),
                notice.version());
    }

    private static void changed(int rows) {
        if (rows == 0) {
            throw new OptimisticLockingFailureException("The notice was changed meanwhile.");
        }
    }

    private static Notice row(ResultSet row, int number) throws SQLException {
        return new Notice(
                new EnvelopeKey(
                        new ElectionId(row.getString("election_id")), new EnvelopeNumber(row.getString("envelope_no"))),
                row.getInt("notice_no"),
                Code.find(NoticeKind.class, row.getString("kind")).orElseThrow(),
                code(row, "ask", Ask.class),
                code(row, "reason", Reason.class),
                row.getObject("decision_no", Integer.class),
                row.getObject("due_at", LocalDateTime.class),
                row.getBoolean("held_apart"),
                instant(row, "withdrawn_at"),
                row.getObject("sent_at", LocalDateTime.class),
                row.getInt("version"));
    }

    private static <E extends Enum<E> & Code> @Nullable E code(ResultSet row, String column, Class<E> type)
            throws SQLException {
        String word = row.getString(column);
        return word == null ? null : Code.find(type, word).orElseThrow();
    }

    private static @Nullable Instant instant(ResultSet row, String column) throws SQLException {
        OffsetDateTime at = row.getObject(column, OffsetDateTime.class);
        return at == null ? null : at.toInstant();
    }
}
