package org.proviso.review.queue;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.review.CaseState;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads from the table of cases since when they wait. */
@Repository
class WaitingSinceStore {

    private final JdbcClient jdbc;

    WaitingSinceStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Map<CaseState, Instant> oldest(ElectionId electionId) {
        Map<CaseState, Instant> oldest = new EnumMap<>(CaseState.class);
        jdbc.sql("select state, min(changed_at) as oldest from envelope_case where election_id = ? group by state")
                .param(electionId)
                .query(row -> {
                    Instant since = moment(row);
                    if (since != null) {
                        oldest.put(
                                Code.find(CaseState.class, row.getString("state"))
                                        .orElseThrow(),
                                since);
                    }
                });
        return oldest;
    }

    @Nullable
    Instant with(ElectionId electionId, UserName userName) {
        return one(jdbc.sql("""
                        select min(taken_at) as oldest from envelope_case
                        where election_id = ? and state = 'in_review' and taken_by = ?""").params(electionId, userName));
    }

    @Nullable
    Instant proposedByOthers(ElectionId electionId, UserName userName) {
        return one(jdbc.sql("""
                        select min(c.changed_at) as oldest from envelope_case c
                        left join end_proposal e on e.election_id = c.election_id and e.envelope_no = c.envelope_no
                            and e.state = 'standing'
                        left join proposal p on p.election_id = c.election_id and p.envelope_no = c.envelope_no
                            and p.state = 'standing' and e.proposal_no is null
                        where c.election_id = ? and c.state = 'proposed'
                            and coalesce(e.proposed_by, p.proposed_by) <> ?""").params(electionId, userName));
    }

    private static @Nullable Instant one(JdbcClient.StatementSpec asked) {
        return asked.query((row, number) -> new WaitingSince.NotKeyed(0, moment(row)))
                .single()
                .oldest();
    }

    WaitingSince.NotKeyed notKeyed(ElectionId electionId, Instant before) {
        return jdbc.sql("""
                        select count(*) as n, min(changed_at) as oldest from envelope_case
                        where election_id = ? and state = 'received' and changed_at < ?""")
                .params(electionId, before)
                .query((row, number) -> new WaitingSince.NotKeyed(row.getInt("n"), moment(row)))
                .single();
    }

    WaitingSince.Held held(ElectionId electionId, UserName you, Instant before) {
        List<WaitingSince.Held> held = jdbc.sql("""
                        select envelope_no, taken_at as oldest from envelope_case
                        where election_id = ? and state = 'in_review' and taken_at < ? and taken_by <> ?
                        order by taken_at, envelope_no""")
                .params(electionId, before, you)
                .query((row, number) ->
                        new WaitingSince.Held(1, new EnvelopeNumber(row.getString("envelope_no")), moment(row)))
                .list();
        return held.isEmpty()
                ? new WaitingSince.Held(0, null, null)
                : new WaitingSince.Held(
                        held.size(), held.get(0).oldest(), held.get(0).since());
    }

    /** The moment that counts for a case's place in the queue is the voter's next deadline where the voter has one. */
    WaitingSince.Lapsing lapsing(ElectionId electionId, LocalDateTime from, LocalDateTime before) {
        return jdbc.sql("""
                        select count(*) as n, min(queue_at) as first_at from envelope_case
                        where election_id = ? and state in ('open', 'in_review', 'proposed', 'ready')
                            and queue_rank in (?, ?) and queue_at >= ? and queue_at < ?""")
                .params(electionId, QueueReason.CURE.rank(), QueueReason.VOTER.rank(), from, before)
                .query((row, number) ->
                        new WaitingSince.Lapsing(row.getInt("n"), row.getObject("first_at", LocalDateTime.class)))
                .single();
    }

    private static @Nullable Instant moment(ResultSet row) throws SQLException {
        OffsetDateTime moment = row.getObject("oldest", OffsetDateTime.class);
        return moment == null ? null : moment.toInstant();
    }
}
