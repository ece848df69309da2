package org.proviso.notices;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
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

    private static final String SELECT = "select n.*, n.notice_no as number from notice n where n.election_id = ? and ";

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
        return jdbc.sql(SELECT + "n.envelope_no = ? order by n.notice_no")
                .params(key.electionId(), key.envelopeNo())
                .query(Notice.class)
                .list();
    }

    Optional<Notice> find(EnvelopeKey key, int number) {
        return of(key).stream().filter(notice -> notice.number() == number).findFirst();
    }

    /** Every notice of an election that was not withdrawn, the one due first at the head. */
    List<Notice> standing(ElectionId electionId) {
        return jdbc.sql(SELECT + "n.withdrawn_at is null order by n.due_at, n.envelope_no, n.notice_no")
                .param(electionId)
                .query(Notice.class)
                .list();
    }

    /** Asks that were withdrawn before their notices went out. */
    List<Notice> withdrawnAsks(ElectionId electionId) {
        return jdbc.sql(SELECT + "n.kind = ? and n.withdrawn_at is not null order by n.envelope_no, n.notice_no")
                .params(electionId, NoticeKind.ASK)
                .query(Notice.class)
                .list();
    }

    /** Envelopes of which an ask ever came up, withdrawn or not. */
    List<EnvelopeNumber> asked(ElectionId electionId) {
        return jdbc.sql(
                        "select distinct envelope_no from notice where election_id = ? and kind = ? order by envelope_no")
                .params(electionId, NoticeKind.ASK)
                .query(EnvelopeNumber.class)
                .list();
    }

    int askedCount(ElectionId electionId) {
        return jdbc.sql("select count(distinct envelope_no) from notice where election_id = ? and kind = ?")
                .params(electionId, NoticeKind.ASK)
                .query(Integer.class)
                .single();
    }

    /** Notices of decisions that stand and do not count a ballot in full. */
    int outcomeCount(ElectionId electionId) {
        return jdbc.sql("""
                        select count(*) from notice n
                        join decision d on d.election_id = n.election_id and d.envelope_no = n.envelope_no
                            and d.decision_no = n.decision_no
                        where n.election_id = ? and n.withdrawn_at is null and d.set_aside_at is null
                            and d.outcome <> 'count'""").param(electionId).query(Integer.class).single();
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

    /** An attempt was taken back: the earliest of those left, or none, and then the notice is due again. */
    void unsent(Notice notice, @Nullable LocalDateTime earliest) {
        changed(jdbc.sql("""
                        update notice set sent_at = cast(? as timestamp), version = version + 1
                        where election_id = ? and envelope_no = ? and notice_no = ? and version = ?""").param(earliest).params(place(notice)).update());
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
}
