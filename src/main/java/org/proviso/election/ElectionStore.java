package org.proviso.election;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.Code;
import org.proviso.core.CountyRuling;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The tables of elections themselves: their office, closed days and county rulings. */
@Repository
class ElectionStore {

    /** An election as it is loaded. */
    private record Loaded(
            Election election,
            String zone,
            String officeHours,
            String languages,
            String contentHash,
            Instant loadedAt) {}

    private final JdbcClient jdbc;
    private final CourtOrderStore orders;
    private final Clock clock;

    ElectionStore(JdbcClient jdbc, CourtOrderStore orders, Clock clock) {
        this.jdbc = jdbc;
        this.orders = orders;
        this.clock = clock;
    }

    Optional<String> withContent(String hash) {
        return jdbc.sql("select election_id from election where content_hash = ?")
                .param(hash)
                .query(String.class)
                .optional();
    }

    /** Of the files it was loaded from; an election that is not there has none. */
    String contentHash(ElectionId id) {
        return jdbc.sql("select content_hash from election where election_id = ?")
                .param(id)
                .query(String.class)
                .optional()
                .orElseThrow(() -> new IllegalArgumentException("The office has no election \"" + id + "\"."));
    }

    /** Closes it once; closing it again finds nothing to close. */
    void close(ElectionId id) {
        int closed = jdbc.sql("""
                        update election set closed_at = ?, version = version + 1
                        where election_id = ? and closed_at is null""").params(clock.instant(), id).update();
        if (closed == 0) {
            throw new OptimisticLockingFailureException("The election " + id + " was closed meanwhile.");
        }
    }

    /** Opens it again; one that is open finds nothing to open. */
    void reopen(ElectionId id) {
        int reopened = jdbc.sql("""
                        update election set closed_at = null, version = version + 1
                        where election_id = ? and closed_at is not null""").param(id).update();
        if (reopened == 0) {
            throw new OptimisticLockingFailureException("The election " + id + " was reopened meanwhile.");
        }
    }

    List<ElectionId> ids() {
        return jdbc.sql("select election_id from election order by held_on desc, election_id")
                .query(ElectionId.class)
                .list();
    }

    void insert(Election election, String contentHash) {
        jdbc.sql("""
                        insert into election (election_id, name, held_on, kind, jurisdiction, zone, rule_pack,
                            deciding_members, deciding_quorum, office_name, office_address, office_phone, office_email,
                            office_hours, receipts, polls_close, languages, content_hash, loaded_at, version)
                        values (:election.id, :election.name, :election.date, :election.kind, :election.jurisdiction,
                            :zone, :election.rulePack, :election.decider.members, :election.decider.quorum,
                            :election.office.name, :election.office.address, :election.office.phone,
                            :election.office.email, :officeHours, :election.receipts, :election.pollsClose,
                            :languages, :contentHash, :loadedAt, 0)""")
                .paramSource(new Loaded(
                        election,
                        election.zone().getId(),
                        OfficeHoursColumn.text(election.office().hours()),
                        String.join(";", election.languages()),
                        contentHash,
                        clock.instant()))
                .update();
        election.daysClosed().forEach(day -> insertClosedDay(election.id(), day));
        election.orders().forEach(order -> orders.insert(election.id(), order, null));
        election.rulings().forEach(ruling -> insertRuling(election.id(), ruling));
    }

    private void insertClosedDay(ElectionId id, LocalDate day) {
        jdbc.sql("insert into election_closed_day (election_id, closed_on) values (?, ?)")
                .params(id, day)
                .update();
    }

    private void insertRuling(ElectionId id, CountyRuling ruling) {
        jdbc.sql("""
                        insert into county_ruling (election_id, rule, ruled_value, signed_by, signed_on, ground)
                        values (?, ?, ?, ?, ?, ?)""")
                .params(id, ruling.rule(), ruling.value(), ruling.signedBy(), ruling.on(), ruling.ground())
                .update();
    }

    Optional<Election> find(ElectionId id) {
        return jdbc.sql("select * from election where election_id = ?")
                .param(id)
                .query(this::election)
                .optional();
    }

    Optional<ZoneId> zone(ElectionId id) {
        return jdbc.sql("select zone from election where election_id = ?")
                .param(id)
                .query(String.class)
                .optional()
                .map(ZoneId::of);
    }

    private Election election(ResultSet row, int number) throws SQLException {
        String id = row.getString("election_id");
        return new Election(
                new ElectionId(id),
                row.getString("name"),
                row.getObject("held_on", LocalDate.class),
                Code.find(Election.Kind.class, row.getString("kind")).orElseThrow(),
                row.getString("jurisdiction"),
                ZoneId.of(row.getString("zone")),
                row.getString("rule_pack"),
                new Election.DecidingBody(row.getInt("deciding_members"), row.getInt("deciding_quorum")),
                new Election.Office(
                        row.getString("office_name"),
                        row.getString("office_address"),
                        row.getString("office_phone"),
                        row.getString("office_email"),
                        OfficeHoursColumn.of(row.getString("office_hours"))),
                row.getObject("polls_close", LocalTime.class),
                List.of(row.getString("languages").split(";")),
                orders.all(id).stream().map(RecordedCourtOrder::order).toList(),
                closedDays(id),
                rulings(id),
                Code.find(Election.Receipts.class, row.getString("receipts")).orElseThrow());
    }

    private Set<LocalDate> closedDays(String id) {
        return Set.copyOf(jdbc.sql("select closed_on from election_closed_day where election_id = ?")
                .param(id)
                .query(LocalDate.class)
                .list());
    }

    private List<CountyRuling> rulings(String id) {
        return jdbc.sql("""
                        select r.*, r.ruled_value as "value", r.signed_on as "on" from county_ruling r
                        where r.election_id = ? order by r.rule""").param(id).query(CountyRuling.class).list();
    }
}
