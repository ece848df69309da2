package org.proviso.review.queue;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.review.CaseState;
import org.proviso.review.facts.WaitsFor;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Lists of cases, filtered and sorted by the database, a page at a time; what is not asked for is not joined. */
@Repository
class QueueListStore {

    /** What somebody was asked and has not answered. */
    private static final String ASKED = """
            select r.envelope_no from research_request r where r.election_id = :election and r.found is null""";

    private static final String PAGE = "limit :limit offset :offset";
    private static final String HOLDER = "left join office_user u on u.user_name = c.taken_by\n";

    private static final String ROWS = """
            select c.envelope_no, c.queue_location, c.queue_precinct, c.queue_reasons, c.queue_language, c.state,
                c.queue_rank, c.queue_at, c.outlook, u.full_name, c.taken_at, c.changed_at,
                (select min(r.waits_for) from research_request r where r.election_id = c.election_id
                    and r.envelope_no = c.envelope_no and r.found is null) as waits_for
            from envelope_case c
            """ + HOLDER;

    private final JdbcClient jdbc;

    QueueListStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The page's numbers alone are sorted out of all cases; only their rows are then joined. */
    List<QueueRow> page(QueueFilter filter, @Nullable Instant before, int offset, int limit) {
        List<String> numbers = filtered("select c.envelope_no ", filter, before, order(filter) + PAGE)
                .param("limit", limit)
                .param("offset", offset)
                .query(String.class)
                .list();
        return rows(filter, numbers);
    }

    /** The rows that follow a place of the list. */
    List<QueueRow> after(QueueFilter filter, @Nullable Instant before, @Nullable QueuePosition place, int limit) {
        String following = place == null ? "" : following(filter, place);
        List<String> numbers = placed(
                        filtered("select c.envelope_no ", filter, before, following + order(filter) + "limit :limit"),
                        place)
                .param("limit", limit)
                .query(String.class)
                .list();
        return rows(filter, numbers);
    }

    int count(QueueFilter filter, @Nullable Instant before) {
        return filtered("select count(*) ", filter, before, "")
                .query(Integer.class)
                .single();
    }

    /** Where a case stands in the order of the list, in the list or not; empty where there is no such case. */
    Optional<QueuePosition> position(QueueFilter filter, EnvelopeNumber envelopeNo) {
        String columns = String.join(", ", columns(filter.sort()));
        return jdbc.sql("select " + columns + " from envelope_case c\n" + HOLDER
                        + "where c.election_id = :election and c.envelope_no = :envelope")
                .param("election", filter.electionId())
                .param("envelope", envelopeNo)
                .query((row, number) -> {
                    List<Object> values = new ArrayList<>();
                    for (int i = 1; i <= columns(filter.sort()).size(); i++) {
                        values.add(row.getObject(i));
                    }
                    return new QueuePosition(values);
                })
                .optional();
    }

    /**
     * The next case of the list that this person can work on: one that nobody has and that needs an office hand now (or
     * waits, where the list is a pile of those that wait) and whose signature does not wait for somebody else's look, or one that this person has. After {@code place}, and none of those passed over.
     */
    Optional<EnvelopeNumber> next(
            QueueFilter filter,
            @Nullable Instant before,
            QueuePosition place,
            SignatureLooker worker,
            Collection<EnvelopeNumber> passedOver) {
        return placed(
                        filtered(
                                "select c.envelope_no ",
                                filter,
                                before,
                                """
                                and (c.taken_by = :worker or c.state = 'open' and (:ofWaiting or c.queue_rank <= :last
                                    and c.envelope_no not in (""" + ASKED + """
                                ))
                                """ + SecondReviewQueueStore.MAY_LOOK + """
                                )
                                and c.envelope_no not in (:passed)
                                """ + following(filter, place)
                                        + order(filter) + "limit 1"),
                        place)
                .param("worker", worker.userName())
                .param("looker", worker.userName())
                .param("otherPartyThan", worker.otherPartyThan())
                .param("ofWaiting", filter.isOfWaiting())
                .param("last", QueueReason.IN_TURN.rank())
                .param("passed", passedOver.isEmpty() ? List.of("") : passedOver)
                .query(EnvelopeNumber.class)
                .optional();
    }

    private List<QueueRow> rows(QueueFilter filter, List<String> numbers) {
        if (numbers.isEmpty()) {
            return List.of();
        }
        return jdbc.sql(ROWS + "where c.election_id = :election and c.envelope_no in (:numbers)\n" + order(filter))
                .param("election", filter.electionId())
                .param("numbers", numbers)
                .query(QueueListStore::row)
                .list();
    }

    /** A statement over the cases that the filter leaves, with what follows. */
    private JdbcClient.StatementSpec filtered(
            String select, QueueFilter filter, @Nullable Instant before, String following) {
        Map<String, Object> values = new HashMap<>();
        StringBuilder where = new StringBuilder();
        filter.wanted().forEach((column, value) -> where.append(condition(column, value, values)));
        if (before != null) {
            where.append("and c.changed_at <= :before\n");
            values.put("before", OffsetDateTime.ofInstant(before, ZoneOffset.UTC));
        }
        // those in review, open and proposed stand side by side in the index
        String states =
                filter.value(QueueColumn.STATE).isPresent() ? "" : "and c.state between 'in_review' and 'proposed'\n";
        String asked = where + following;
        String sql = select + "from envelope_case c\n"
                + (asked.contains("u.full_name") ? HOLDER : "")
                + "where c.election_id = :election\n" + states + asked;
        return jdbc.sql(sql).param("election", filter.electionId()).params(values);
    }

    private static String condition(QueueColumn column, String value, Map<String, Object> values) {
        String name = column.code();
        if (column == QueueColumn.AGE) {
            return "";
        }
        if (column == QueueColumn.PILE) {
            values.put("waiting", QueueReason.VOTER.rank());
            return pile(Code.find(QueuePile.class, value).orElseThrow(), values);
        }
        values.put(name, column == QueueColumn.REASON ? ";" + value + ";" : value);
        return switch (column) {
            case STATE -> "and c.state = :state\n";
            case OUTLOOK -> "and c.outlook = :outlook\n";
            case REASON -> "and position(:reason in ';' || c.queue_reasons || ';') > 0\n";
            case LOCATION -> "and c.queue_location = :location\n";
            case PRECINCT -> "and c.queue_precinct = :precinct\n";
            case LANGUAGE -> "and c.queue_language = :language\n";
            case HOLDER -> "and c.taken_by = :holder\n";
            case PILE, AGE -> "";
        };
    }

    private static String pile(QueuePile pile, Map<String, Object> values) {
        if (pile == QueuePile.TO_DO) {
            return "and c.queue_rank <> :waiting and not c.envelope_no in (" + ASKED + ")\n";
        }
        values.put("pile", pile.code());
        String asked = "c.envelope_no in (" + ASKED + " and r.waits_for = :pile)";
        return pile == QueuePile.VOTER
                ? "and (c.queue_rank = :waiting or " + asked + ")\n"
                : "and c.queue_rank <> :waiting and " + asked + "\n";
    }

    private static String order(QueueFilter filter) {
        // the index of the queue is read from its first column on
        String first = filter.sort() == QueueSort.PRIORITY ? "c.election_id, " : "";
        String end = filter.descending() ? " desc" : "";
        return "order by " + first
                + columns(filter.sort()).stream().map(column -> column + end).collect(Collectors.joining(", ")) + "\n";
    }

    /** What a list is sorted by; the number of the envelope settles what is equal. */
    private static List<String> columns(QueueSort sort) {
        return switch (sort) {
            case PRIORITY -> List.of("c.state", "c.queue_rank", "c.queue_at", "c.envelope_no");
            case ENVELOPE -> List.of("c.envelope_no");
            case OUTLOOK -> List.of("c.outlook", "c.envelope_no");
            case REASON -> List.of("c.queue_reasons", "c.envelope_no");
            case LOCATION -> List.of("c.queue_location", "c.envelope_no");
            case PRECINCT -> List.of("c.queue_precinct", "c.envelope_no");
            case LANGUAGE -> List.of("c.queue_language", "c.envelope_no");
            case HOLDER ->
                List.of("case when c.taken_by is null then 1 else 0 end", "coalesce(u.full_name, '')", "c.envelope_no");
            case AGE -> List.of("c.changed_at", "c.envelope_no");
        };
    }

    private static String following(QueueFilter filter, QueuePosition place) {
        List<String> marks = new ArrayList<>();
        for (int i = 0; i < place.values().size(); i++) {
            marks.add(":place" + i);
        }
        return "and (" + String.join(", ", columns(filter.sort())) + ") " + (filter.descending() ? "<" : ">") + " ("
                + String.join(", ", marks) + ")\n";
    }

    private static JdbcClient.StatementSpec placed(JdbcClient.StatementSpec spec, @Nullable QueuePosition place) {
        JdbcClient.StatementSpec placed = spec;
        for (int i = 0; place != null && i < place.values().size(); i++) {
            placed = placed.param("place" + i, place.values().get(i));
        }
        return placed;
    }

    private static QueueRow row(ResultSet row, int number) throws SQLException {
        LocalDateTime at = row.getObject("queue_at", LocalDateTime.class);
        String waitsFor = row.getString("waits_for");
        OffsetDateTime taken = row.getObject("taken_at", OffsetDateTime.class);
        String reasons = row.getString("queue_reasons");
        return new QueueRow(
                new EnvelopeNumber(row.getString("envelope_no")),
                row.getString("queue_location"),
                row.getString("queue_precinct"),
                row.getString("queue_language"),
                reasons.isEmpty() ? List.of() : List.of(reasons.split(";")),
                Code.find(CaseState.class, row.getString("state")).orElseThrow(),
                QueueReason.of(row.getInt("queue_rank")),
                at.equals(QueueStore.LAST) ? null : at,
                waitsFor == null ? null : Code.find(WaitsFor.class, waitsFor).orElseThrow(),
                Code.find(Recommendation.class, row.getString("outlook")).orElseThrow(),
                row.getString("full_name"),
                (taken == null ? row.getObject("changed_at", OffsetDateTime.class) : taken).toInstant());
    }
}
