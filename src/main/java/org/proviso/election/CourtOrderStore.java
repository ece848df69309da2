package org.proviso.election;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.CourtOrder;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The tables of court orders and the envelopes they name. */
@Repository
public class CourtOrderStore {

    /** An order under its number. */
    private record Row(
            ElectionId electionId,
            int number,
            CourtOrder order,
            String caseNo,
            String judge,
            @Nullable UserName by,
            Instant recordedAt) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    CourtOrderStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** Adds an order under the next number of its election; two at the same moment collide, and the later one fails. */
    public int insert(ElectionId id, CourtOrder order, @Nullable UserName by) {
        return insert(id, order, "", "", by);
    }

    /** The same with the number of the court's case and the judge. */
    public int insert(ElectionId id, CourtOrder order, String caseNo, String judge, @Nullable UserName by) {
        int number = jdbc.sql("select coalesce(max(order_no), 0) + 1 from court_order where election_id = ?")
                .param(id)
                .query(Integer.class)
                .single();
        jdbc.sql("""
                        insert into court_order (election_id, order_no, kind, court, ordered_on, scope, standing,
                            until_at, case_no, judge, recorded_by, recorded_at, version)
                        values (:electionId, :number, :order.kind, :order.court, :order.date, :order.scope,
                            :order.standing, :order.until, :caseNo, :judge, :by, :recordedAt, 0)""")
                .paramSource(new Row(id, number, order, caseNo, judge, by, clock.instant()))
                .update();
        for (EnvelopeNumber envelope : order.envelopeNos()) {
            jdbc.sql("insert into court_order_envelope (election_id, order_no, envelope_no) values (?, ?, ?)")
                    .params(id, number, envelope)
                    .update();
        }
        return number;
    }

    public void changeStanding(ElectionId id, int number, int version, CourtOrder.Status standing, UserName by) {
        int changed =
                jdbc.sql("""
                        update court_order set standing = ?, standing_by = ?, version = version + 1
                        where election_id = ? and order_no = ? and version = ?""").params(standing.code(), by, id, number, version).update();
        if (changed == 0) {
            throw new OptimisticLockingFailureException(
                    "Order " + number + " was changed by somebody else since you opened it, or is not there.");
        }
    }

    public List<RecordedCourtOrder> all(String id) {
        Map<Integer, Set<EnvelopeNumber>> named = new HashMap<>();
        jdbc.sql("select order_no, envelope_no from court_order_envelope where election_id = ?")
                .param(id)
                .query((ResultSet row) -> {
                    named.computeIfAbsent(row.getInt("order_no"), any -> new HashSet<>())
                            .add(new EnvelopeNumber(row.getString("envelope_no")));
                });
        return jdbc.sql("select * from court_order where election_id = ? order by order_no")
                .param(id)
                .query((row, place) -> order(row, named.getOrDefault(row.getInt("order_no"), Set.of())))
                .list();
    }

    public RecordedCourtOrder find(ElectionId id, int number) {
        return jdbc.sql("select * from court_order where election_id = ? and order_no = ?")
                .params(id, number)
                .query((row, place) -> order(row, envelopesOf(id, number)))
                .single();
    }

    private static RecordedCourtOrder order(ResultSet row, Set<EnvelopeNumber> envelopeNos) throws SQLException {
        CourtOrder order = new CourtOrder(
                Code.find(CourtOrder.Kind.class, row.getString("kind")).orElseThrow(),
                row.getString("court"),
                row.getObject("ordered_on", LocalDate.class),
                row.getString("scope"),
                Code.find(CourtOrder.Status.class, row.getString("standing")).orElseThrow(),
                row.getObject("until_at", LocalDateTime.class),
                Set.copyOf(envelopeNos));
        List<UserName> by = Stream.ofNullable(row.getString("recorded_by"))
                .map(UserName::new)
                .toList();
        return new RecordedCourtOrder(
                row.getInt("order_no"),
                row.getInt("version"),
                order,
                by,
                row.getString("case_no"),
                row.getString("judge"));
    }

    private Set<EnvelopeNumber> envelopesOf(ElectionId id, int order) {
        return Set.copyOf(
                jdbc.sql("select envelope_no from court_order_envelope where election_id = ? and order_no = ?")
                        .params(id, order)
                        .query(EnvelopeNumber.class)
                        .list());
    }
}
