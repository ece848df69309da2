package org.proviso.notices;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.proviso.core.Code;
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
            UserName by,
            Instant loggedAt) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    NoticeAttemptStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    List<NoticeAttempt> of(Notice notice) {
        return jdbc.sql("""
                        select * from notice_attempt where election_id = ? and envelope_no = ? and notice_no = ?
                        order by attempt_no""")
                .params(notice.key().electionId(), notice.key().envelopeNo(), notice.number())
                .query(NoticeAttemptStore::row)
                .list();
    }

    Optional<NoticeAttempt> find(Notice notice, int number) {
        return of(notice).stream().filter(attempt -> attempt.number() == number).findFirst();
    }

    /** The number of the attempt. */
    int insert(Notice notice, NoticeChannel channel, LocalDateTime sentAt, String letterHash, UserName by) {
        int number = of(notice).size() + 1;
        jdbc.sql("""
                        insert into notice_attempt (election_id, envelope_no, notice_no, attempt_no, channel, sent_at,
                            letter_sha256, logged_by, logged_at)
                        values (:notice.key.electionId, :notice.key.envelopeNo, :notice.number, :number, :channel,
                            :sentAt, :letterHash, :by, :loggedAt)""")
                .paramSource(new Row(notice, number, channel, sentAt, letterHash, by, clock.instant()))
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

    private static NoticeAttempt row(ResultSet row, int number) throws SQLException {
        return new NoticeAttempt(
                row.getInt("attempt_no"),
                Code.find(NoticeChannel.class, row.getString("channel")).orElseThrow(),
                row.getObject("sent_at", LocalDateTime.class),
                row.getObject("came_back_at", LocalDateTime.class),
                row.getString("letter_sha256"),
                row.getString("logged_by"));
    }
}
