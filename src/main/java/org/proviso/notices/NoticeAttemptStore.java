package org.proviso.notices;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.UserName;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of attempts to tell a voter; added, and once marked as come back. */
@Repository
class NoticeAttemptStore {

    /** An attempt to send a notice, under its number. */
    private record Row(
            Notice notice,
            int number,
            NoticeChannel channel,
            LocalDateTime sentAt,
            String letterHash,
            @Nullable LocalDateTime toldUntil,
            UserName by,
            Instant loggedAt) {}

    /** A slip of the log, who took it back and why. */
    private record TakenBack(Notice notice, NoticeAttempt attempt, String because, UserName by, Instant at) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    NoticeAttemptStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    List<NoticeAttempt> of(Notice notice) {
        return jdbc.sql("""
                        select a.*, a.attempt_no as number, a.letter_sha256 as letter_hash from notice_attempt a
                        where a.election_id = ? and a.envelope_no = ? and a.notice_no = ? order by a.attempt_no""")
                .params(notice.key().electionId(), notice.key().envelopeNo(), notice.number())
                .query(NoticeAttempt.class)
                .list();
    }

    Optional<NoticeAttempt> find(Notice notice, int number) {
        return of(notice).stream().filter(attempt -> attempt.number() == number).findFirst();
    }

    /** The number of the attempt; {@code toldUntil} is the date that the notice gave, null where it gave none. */
    int insert(
            Notice notice,
            NoticeChannel channel,
            LocalDateTime sentAt,
            String letterHash,
            @Nullable LocalDateTime toldUntil,
            UserName by) {
        int number = of(notice).size() + 1;
        jdbc.sql("""
                        insert into notice_attempt (election_id, envelope_no, notice_no, attempt_no, channel, sent_at,
                            letter_sha256, told_until, logged_by, logged_at)
                        values (:notice.key.electionId, :notice.key.envelopeNo, :notice.number, :number, :channel,
                            :sentAt, :letterHash, :toldUntil, :by, :loggedAt)""")
                .paramSource(new Row(notice, number, channel, sentAt, letterHash, toldUntil, by, clock.instant()))
                .update();
        return number;
    }

    void cameBack(Notice notice, int number, LocalDateTime at) {
        jdbc.sql("""
                        update notice_attempt set came_back_at = ?
                        where election_id = ? and envelope_no = ? and notice_no = ? and attempt_no = ?""")
                .params(at, notice.key().electionId(), notice.key().envelopeNo(), notice.number(), number)
                .update();
    }

    /** It was logged by mistake: it stays readable. */
    void takeBack(Notice notice, NoticeAttempt attempt, String because, UserName by) {
        jdbc.sql("""
                        update notice_attempt set taken_back_at = :at, taken_back_by = :by, taken_back_because = :because
                        where election_id = :notice.key.electionId and envelope_no = :notice.key.envelopeNo
                            and notice_no = :notice.number and attempt_no = :attempt.number""")
                .paramSource(new TakenBack(notice, attempt, because, by, clock.instant()))
                .update();
    }

    /** The mail did not come back: the slip is kept beside it. */
    void takeBackCameBack(Notice notice, NoticeAttempt attempt, String because, UserName by) {
        TakenBack row = new TakenBack(notice, attempt, because, by, clock.instant());
        jdbc.sql("""
                        insert into returned_mail_taken_back (election_id, envelope_no, notice_no, attempt_no, taken_no,
                            came_back_at, because, taken_back_by, taken_back_at)
                        select :notice.key.electionId, :notice.key.envelopeNo, :notice.number, :attempt.number,
                            coalesce(max(taken_no), 0) + 1, cast(:attempt.cameBackAt as timestamp),
                            cast(:because as varchar), cast(:by as varchar), cast(:at as timestamp with time zone)
                        from returned_mail_taken_back
                        where election_id = :notice.key.electionId and envelope_no = :notice.key.envelopeNo
                            and notice_no = :notice.number and attempt_no = :attempt.number""").paramSource(row).update();
        jdbc.sql("""
                        update notice_attempt set came_back_at = null
                        where election_id = :notice.key.electionId and envelope_no = :notice.key.envelopeNo
                            and notice_no = :notice.number and attempt_no = :attempt.number""").paramSource(row).update();
    }
}
