package org.proviso.review.mail;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.VoterId;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The tables of lists for the mail-ballot desk and of its answers. */
@Repository
class MailListStore {

    /** A line as its row has it. */
    private record Row(
            EnvelopeKey key,
            int listNo,
            int lineNo,
            MailLine.Kind kind,
            int decisionNo,
            VoterId voterId,
            String voterName,
            String receiptNo,
            String ballots,
            UserName sentBy,
            Instant sentAt) {

        static Row of(MailLine line, int listNo, int lineNo, UserName by, Instant at) {
            return new Row(
                    line.key(),
                    listNo,
                    lineNo,
                    line.kind(),
                    line.decision(),
                    line.voterId(),
                    line.voterName(),
                    line.receiptNo(),
                    line.ballots(),
                    by,
                    at);
        }
    }

    /** A line joined with the answer that holds, as their rows have them. */
    private record Joined(
            Row row,
            @Nullable Integer number,
            @Nullable DeskAnswer answer,
            @Nullable LocalDate answeredOn,
            @Nullable String answeredBy,
            @Nullable String because,
            @Nullable UserName recordedBy) {

        SentLine line() {
            MailLine line = new MailLine(
                    row.key(),
                    row.kind(),
                    row.decisionNo(),
                    row.voterId(),
                    row.voterName(),
                    row.receiptNo(),
                    row.ballots());
            return new SentLine(row.listNo(), row.lineNo(), line, row.sentBy(), row.sentAt(), given());
        }

        private @Nullable GivenAnswer given() {
            if (number == null
                    || answer == null
                    || answeredOn == null
                    || answeredBy == null
                    || because == null
                    || recordedBy == null) {
                return null;
            }
            return new GivenAnswer(number, answer, answeredOn, answeredBy, because, recordedBy);
        }
    }

    /** An answer as its row has it. */
    private record AnswerRow(
            EnvelopeKey key,
            int answerNo,
            int listNo,
            int lineNo,
            DeskAnswer answer,
            LocalDate answeredOn,
            String answeredBy,
            String because,
            UserName recordedBy,
            Instant recordedAt) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    MailListStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** Every line that was sent, by list and line, with the answer that holds. */
    List<SentLine> all(ElectionId electionId) {
        return jdbc.sql("""
                        select l.*, a.answer_no as number, a.answer, a.answered_on, a.answered_by, a.because,
                            a.recorded_by
                        from mail_desk_line l
                        left join mail_desk_answer a on a.election_id = l.election_id and a.list_no = l.list_no
                            and a.line_no = l.line_no and a.answer_no = (select max(n.answer_no) from mail_desk_answer n
                                where n.election_id = l.election_id and n.list_no = l.list_no and n.line_no = l.line_no)
                        where l.election_id = ? order by l.list_no, l.line_no""").param(electionId).query(Joined.class).list().stream()
                .map(Joined::line)
                .toList();
    }

    /** Keeps a list under its number; of two who send the same one the second is told. */
    void insert(int listNo, List<MailLine> lines, UserName by) {
        Instant now = clock.instant();
        int lineNo = 0;
        try {
            for (MailLine line : lines) {
                lineNo++;
                jdbc.sql("""
                                insert into mail_desk_line (election_id, envelope_no, list_no, line_no, kind,
                                    decision_no, voter_id, voter_name, receipt_no, ballots, sent_by, sent_at)
                                values (:key.electionId, :key.envelopeNo, :listNo, :lineNo, :kind, :decisionNo,
                                    :voterId, :voterName, :receiptNo, :ballots, :sentBy, :sentAt)""").paramSource(Row.of(line, listNo, lineNo, by, now)).update();
            }
        } catch (DuplicateKeyException e) {
            throw new OptimisticLockingFailureException("List " + listNo + " was sent meanwhile.", e);
        }
    }

    /** Adds an answer to a line; it holds from now on. */
    void answer(SentLine to, GivenAnswer given) {
        EnvelopeKey key = to.line().key();
        int number = jdbc.sql("""
                        select coalesce(max(answer_no), 0) + 1 from mail_desk_answer
                        where election_id = ? and envelope_no = ?""")
                .params(key.electionId(), key.envelopeNo())
                .query(Integer.class)
                .single();
        jdbc.sql("""
                        insert into mail_desk_answer (election_id, envelope_no, answer_no, list_no, line_no, answer,
                            answered_on, answered_by, because, recorded_by, recorded_at)
                        values (:key.electionId, :key.envelopeNo, :answerNo, :listNo, :lineNo, :answer, :answeredOn,
                            :answeredBy, :because, :recordedBy, :recordedAt)""")
                .paramSource(new AnswerRow(
                        key,
                        number,
                        to.listNo(),
                        to.lineNo(),
                        given.answer(),
                        given.answeredOn(),
                        given.answeredBy(),
                        given.because(),
                        given.recordedBy(),
                        clock.instant()))
                .update();
    }
}
