package org.proviso.intake;

import java.util.ArrayList;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.Transmittal;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.namedparam.NamedParameterJdbcOperations;
import org.springframework.jdbc.core.namedparam.SqlParameterSourceUtils;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of transmittals. */
@Repository
class TransmittalStore {

    private static final String INSERT = """
            insert into transmittal (voting_location, returned_on, bag, seal_out, seal_in, supplied, issued, spoiled,
                unused, returned, scanned_in_error, loose_ballots, election_id, line_no, version)
            values (:transmittal.votingLocation, :transmittal.day, :transmittal.bag, :transmittal.sealOut, :transmittal.sealIn, :transmittal.supplied, :transmittal.issued,
                :transmittal.spoiled, :transmittal.unused, :transmittal.returned, :transmittal.scannedInError, :transmittal.looseBallots, :electionId, :line,
                :version)""";

    /** A transmittal under its line, in the version that stands there. */
    private record Line(ElectionId electionId, int line, int version, Transmittal transmittal) {}

    private final JdbcClient jdbc;
    private final NamedParameterJdbcOperations batches;

    TransmittalStore(JdbcClient jdbc, NamedParameterJdbcOperations batches) {
        this.jdbc = jdbc;
        this.batches = batches;
    }

    void insert(ElectionId electionId, List<Transmittal> transmittals) {
        List<Line> lines = new ArrayList<>();
        for (Transmittal transmittal : transmittals) {
            lines.add(new Line(electionId, lines.size() + 1, 0, transmittal));
        }
        batches.batchUpdate(INSERT, SqlParameterSourceUtils.createBatch(lines));
    }

    /** Adds one under the next line of its election; two at the same moment collide, and the later one fails. */
    int add(ElectionId electionId, Transmittal transmittal) {
        int line = jdbc.sql("select coalesce(max(line_no), 0) + 1 from transmittal where election_id = ?")
                .param(electionId)
                .query(Integer.class)
                .single();
        jdbc.sql(INSERT).paramSource(new Line(electionId, line, 0, transmittal)).update();
        return line;
    }

    void change(ElectionId electionId, int line, int version, Transmittal transmittal) {
        int changed = jdbc.sql("""
                        update transmittal set voting_location = :transmittal.votingLocation, returned_on = :transmittal.day,
                            bag = :transmittal.bag, seal_out = :transmittal.sealOut, seal_in = :transmittal.sealIn, supplied = :transmittal.supplied,
                            issued = :transmittal.issued, spoiled = :transmittal.spoiled, unused = :transmittal.unused,
                            returned = :transmittal.returned, scanned_in_error = :transmittal.scannedInError,
                            loose_ballots = :transmittal.looseBallots, version = version + 1
                        where election_id = :electionId and line_no = :line and version = :version""")
                .paramSource(new Line(electionId, line, version, transmittal))
                .update();
        if (changed == 0) {
            throw new OptimisticLockingFailureException("The transmittal of " + transmittal.votingLocation()
                    + " was changed by somebody else since you opened it, or is not there.");
        }
    }

    List<RecordedTransmittal> recorded(ElectionId electionId) {
        return jdbc.sql("""
                        select t.*, t.returned_on as "day" from transmittal t
                        where t.election_id = ? order by t.line_no""").param(electionId).query(RecordedTransmittal.class).list();
    }

    List<Transmittal> all(ElectionId electionId) {
        return recorded(electionId).stream()
                .map(RecordedTransmittal::transmittal)
                .toList();
    }
}
