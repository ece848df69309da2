package org.proviso.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.proviso.core.Transmittal;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;

/** The table of transmittals. */
@Repository
class TransmittalStore {

    private final JdbcTemplate jdbc;

    TransmittalStore(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    void insert(String electionId, List<Transmittal> transmittals) {
        List<Object[]> rows = new ArrayList<>();
        for (Transmittal one : transmittals) {
            rows.add(new Object[] {
                electionId,
                rows.size() + 1,
                one.votingLocation(),
                one.day(),
                one.bag(),
                one.sealOut(),
                one.sealIn(),
                one.supplied(),
                one.issued(),
                one.spoiled(),
                one.unused(),
                one.returned(),
                one.scannedInError(),
                one.looseBallots()
            });
        }
        jdbc.batchUpdate("""
                insert into transmittal (election_id, line_no, voting_location, returned_on, bag, seal_out, seal_in,
                    supplied, issued, spoiled, unused, returned, scanned_in_error, loose_ballots, version)
                values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 0)""", rows);
    }

    List<Transmittal> all(String electionId) {
        return jdbc.query(
                "select * from transmittal where election_id = ? order by line_no",
                (row, number) -> new Transmittal(
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
                        row.getObject("loose_ballots", Integer.class)),
                electionId);
    }
}
