package org.proviso.review.queue;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.review.CaseState;
import org.proviso.review.CaseVersion;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The queue of reviewers in the table of cases: read in the order of its index, a page at a time. */
@Repository
class QueueStore {

    /** Stands for "nobody noted a moment": after all that were noted. */
    private static final LocalDateTime LAST = LocalDateTime.of(9999, 12, 31, 0, 0);

    /** The order of the index, from its first column on, so that a page is read from it and not sorted out of all cases. */
    private static final String ORDER = "order by c.election_id, c.state, c.queue_rank, c.queue_at, c.envelope_no\n";

    private static final String ENVELOPE =
            "join envelope e on e.election_id = c.election_id and e.envelope_no = c.envelope_no\n";

    private final JdbcClient jdbc;

    QueueStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The first open case that needs an office hand, leaving out those passed over and those that wait for an answer. */
    Optional<CaseVersion> first(ElectionId electionId, Collection<EnvelopeNumber> passedOver) {
        return jdbc.sql("""
                        select c.election_id, c.envelope_no, c.version from envelope_case c
                        where c.election_id = :election and c.state = 'open' and c.queue_rank <= :last
                            and c.envelope_no not in (:passed)
                            and not exists (select 1 from research_request r where r.election_id = c.election_id
                                and r.envelope_no = c.envelope_no and r.found is null)
                        order by c.election_id, c.state, c.queue_rank, c.queue_at, c.envelope_no limit 1""")
                .param("election", electionId)
                .param("last", QueueReason.IN_TURN.rank())
                .param("passed", passedOver.isEmpty() ? List.of("") : passedOver)
                .query(CaseVersion.class)
                .optional();
    }

    /** The page's numbers come from the index alone; only their rows are then joined. */
    List<QueueRow> page(QueueFilter filter, int offset, int limit) {
        List<String> numbers = filtered(
                        "select c.envelope_no " + from(filter) + ORDER + "limit :limit offset :offset", filter)
                .param("limit", limit)
                .param("offset", offset)
                .query(String.class)
                .list();
        return numbers.isEmpty() ? List.of() : rows(filter.electionId(), numbers);
    }

    private List<QueueRow> rows(ElectionId electionId, List<String> numbers) {
        return jdbc.sql("""
                        select c.envelope_no, e.voting_location, e.issue_reasons, c.state, c.queue_rank, c.queue_at,
                            c.outlook, u.full_name, c.taken_at, c.changed_at
                        from envelope_case c
                        """ + ENVELOPE + """
                        left join office_user u on u.user_name = c.taken_by
                        where c.election_id = :election and c.envelope_no in (:numbers)
                        """ + ORDER)
                .param("election", electionId)
                .param("numbers", numbers)
                .query(QueueStore::row)
                .list();
    }

    int count(QueueFilter filter) {
        return filtered("select count(*) " + from(filter), filter)
                .query(Integer.class)
                .single();
    }

    List<String> locations(ElectionId electionId) {
        return jdbc.sql("select distinct voting_location from envelope where election_id = ? order by voting_location")
                .param(electionId)
                .query(String.class)
                .list();
    }

    void place(EnvelopeKey key, QueuePlace place, Recommendation outlook) {
        jdbc.sql("""
                        update envelope_case set queue_at = ?, outlook = ?, queue_rank = case
                            when queue_rank = ? and ? = ? and state in ('open', 'in_review') then queue_rank else ? end
                        where election_id = ? and envelope_no = ?""")
                .params(place.at() == null ? LAST : place.at(), outlook.code())
                .params(
                        QueueReason.CHANGED.rank(),
                        place.turn().rank(),
                        QueueReason.IN_TURN.rank(),
                        place.turn().rank())
                .params(key.electionId(), key.envelopeNo())
                .update();
    }

    /** Moves a case ahead in the queue. */
    void changed(EnvelopeKey key) {
        jdbc.sql("""
                        update envelope_case set queue_rank = ?
                        where election_id = ? and envelope_no = ? and queue_rank = ?""")
                .params(QueueReason.CHANGED.rank(), key.electionId(), key.envelopeNo(), QueueReason.IN_TURN.rank())
                .update();
    }

    private static String from(QueueFilter filter) {
        return "from envelope_case c\n"
                + (filter.votingLocation() == null ? "" : ENVELOPE)
                + "where c.election_id = :election\n"
                + where(filter);
    }

    /** Those in review, open and proposed stand side by side in the index. */
    private static String where(QueueFilter filter) {
        String states =
                filter.state() == null ? "and c.state between 'in_review' and 'proposed'\n" : "and c.state = :state\n";
        return states
                + (filter.outlook() == null ? "" : "and c.outlook = :outlook\n")
                + (filter.votingLocation() == null ? "" : "and e.voting_location = :location\n")
                + (filter.with() == null ? "" : "and c.taken_by = :with\n");
    }

    private JdbcClient.StatementSpec filtered(String sql, QueueFilter filter) {
        JdbcClient.StatementSpec spec = jdbc.sql(sql).param("election", filter.electionId());
        spec = with(
                spec, "state", filter.state() == null ? null : filter.state().code());
        spec = with(
                spec,
                "outlook",
                filter.outlook() == null ? null : filter.outlook().code());
        spec = with(spec, "location", filter.votingLocation());
        return with(spec, "with", filter.with());
    }

    private static JdbcClient.StatementSpec with(JdbcClient.StatementSpec spec, String name, @Nullable String value) {
        return value == null ? spec : spec.param(name, value);
    }

    private static QueueRow row(ResultSet row, int number) throws SQLException {
        LocalDateTime at = row.getObject("queue_at", LocalDateTime.class);
        OffsetDateTime taken = row.getObject("taken_at", OffsetDateTime.class);
        String reasons = row.getString("issue_reasons");
        return new QueueRow(
                new EnvelopeNumber(row.getString("envelope_no")),
                row.getString("voting_location"),
                reasons.isEmpty() ? List.of() : List.of(reasons.split(";")),
                Code.find(CaseState.class, row.getString("state")).orElseThrow(),
                QueueReason.of(row.getInt("queue_rank")),
                at.equals(LAST) ? null : at,
                Code.find(Recommendation.class, row.getString("outlook")).orElseThrow(),
                row.getString("full_name"),
                (taken == null ? row.getObject("changed_at", OffsetDateTime.class) : taken).toInstant());
    }
}
