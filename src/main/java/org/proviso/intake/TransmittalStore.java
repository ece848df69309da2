package org.proviso.intake;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.proviso.core.ElectionId;
import org.proviso.core.Transmittal;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;

/** The table of transmittals. */
@Repository
class TransmittalStore {

    private static final String INSERT = """
            insert into transmittal (voting_location, returned_on, bag, seal_out, seal_in, supplied, issued, spoiled,
                unused, returned, scanned_in_error, loose_ballots, election_id, line_no, version)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 0)""";

    private final JdbcTemplate jdbc;

    TransmittalStore(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    void insert(ElectionId electionId, List<Transmittal> transmittals) {
        List<Object[]> rows = new ArrayList<>();
        for (Transmittal one : transmittals) {
            rows.add(row(one, electionId.value(), rows.size() + 1));
        }
        jdbc.batchUpdate(INSERT, rows);
    }

    /** Adds one under the next line of its election; two at the same moment collide, and the later one fails. */
    int add(ElectionId electionId, Transmittal one) {
        int line = Objects.requireNonNull(
                jdbc.queryForObject(
                        "select coalesce(max(line_no), 0) + 1 from transmittal where election_id = ?",
                        Integer.class,
                        electionId.value()),
                "there is always a next line");
        jdbc.update(INSERT, row(one, electionId.value(), line));
        return line;
    }

    void change(ElectionId electionId, int line, int version, Transmittal one) {
        int changed = jdbc.update("""
                update transmittal set voting_location = ?, returned_on = ?, bag = ?, seal_out = ?, seal_in = ?,
                    supplied = ?, issued = ?, spoiled = ?, unused = ?, returned = ?, scanned_in_error = ?,
                    loose_ballots = ?, version = version + 1
                where election_id = ? and line_no = ? and version = ?""", row(one, electionId.value(), line, version));
        if (changed == 0) {
            throw new OptimisticLockingFailureException("The transmittal of " + one.votingLocation()
                    + " was changed by somebody else since you opened it, or is not there.");
        }
    }

    private static Object[] row(Transmittal one, Object... key) {
        List<Object> row = new ArrayList<>();
        Collections.addAll(row, one.votingLocation(), one.day(), one.bag(), one.sealOut(), one.sealIn());
        Collections.addAll(row, one.supplied(), one.issued(), one.spoiled(), one.unused(), one.returned());
        Collections.addAll(row, one.scannedInError(), one.looseBallots());
        Collections.addAll(row, key);
        return row.toArray();
    }

    List<RecordedTransmittal> recorded(ElectionId electionId) {
        return jdbc.query(
                "select * from transmittal where election_id = ? order by line_no",
                (row, number) ->
                        new RecordedTransmittal(row.getInt("line_no"), row.getInt("version"), transmittal(row)),
                electionId.value());
    }

    List<Transmittal> all(ElectionId electionId) {
        return recorded(electionId).stream()
                .map(RecordedTransmittal::transmittal)
                .toList();
    }

    private static Transmittal transmittal(ResultSet row) throws SQLException {
        return new Transmittal(
                row.getString("voting_location"),
                row.getObject("returned_on", LocalDate.class),
                row.getString("bag"),
                row.getString("seal_out"),
                row.getString("seal_in"),
                row.getObject("supplied", Integer.class),
                row.getInt("issued"),
                row.getInt("spoiled"),
                row.getObject("unused", Integer.class),
                row.getInt("returned"),
                row.getObject("scanned_in_error", Integer.class),
                row.getObject("loose_ballots", Integer.class));
    }
}
