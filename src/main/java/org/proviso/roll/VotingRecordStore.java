package org.proviso.roll;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.CheckIn;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.Key;
import org.proviso.core.MailBallot;
import org.proviso.core.PersonName;
import org.proviso.core.VotedElsewhere;
import org.proviso.core.VoterId;
import org.proviso.core.YesNo;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.stereotype.Repository;

/** The tables of what voters did elsewhere: mail ballots, poll books, and the state's list. */
@Repository
class VotingRecordStore {

    private static final int BATCH = 1_000;

    private static final RowMapper<VotedElsewhere> ELSEWHERE = (row, number) -> elsewhere(row);

    private static final RowMapper<MailBallot> BALLOT = (row, number) -> new MailBallot(
            new VoterId(row.getString("voter_id")),
            row.getString("serial"),
            row.getObject("issued_on", LocalDate.class),
            Code.find(MailBallot.State.class, row.getString("state")).orElseThrow(),
            row.getObject("state_on", LocalDate.class));

    private static final RowMapper<CheckIn> CHECK_IN = (row, number) -> new CheckIn(
            new VoterId(row.getString("voter_id")),
            row.getString("voting_location"),
            row.getObject("checked_in_at", LocalDateTime.class),
            Code.find(CheckIn.Kind.class, row.getString("kind")).orElseThrow(),
            YesNo.valueOf(row.getString("ballot_issued").toUpperCase(Locale.ROOT)),
            row.getObject("cancelled_at", LocalDateTime.class));

    private final JdbcTemplate jdbc;

    VotingRecordStore(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    void insertMailBallots(ElectionId id, int snapshot, List<MailBallot> ballots) {
        List<Object[]> rows = new ArrayList<>(ballots.size());
        for (MailBallot ballot : ballots) {
            rows.add(new Object[] {
                id.value(),
                snapshot,
                rows.size() + 1,
                ballot.voterId().value(),
                ballot.serial(),
                ballot.issuedOn(),
                ballot.state().code(),
                ballot.stateOn()
            });
        }
        insert("mail_ballot (election_id, snapshot_no, row_no, voter_id, serial, issued_on, state, state_on)", rows);
    }

    void insertCheckIns(ElectionId id, int snapshot, List<CheckIn> checkIns) {
        List<Object[]> rows = new ArrayList<>(checkIns.size());
        for (CheckIn checkIn : checkIns) {
            rows.add(new Object[] {
                id.value(),
                snapshot,
                rows.size() + 1,
                checkIn.voterId().value(),
                checkIn.votingLocation(),
                checkIn.at(),
                checkIn.kind().code(),
                checkIn.ballotIssued().name().toLowerCase(Locale.ROOT),
                checkIn.cancelledAt()
            });
        }
        insert(
                "check_in (election_id, snapshot_no, row_no, voter_id, voting_location, checked_in_at, kind,"
                        + " ballot_issued, cancelled_at)",
                rows);
    }

    void insertVotedElsewhere(ElectionId id, int snapshot, List<VotedElsewhere> lines) {
        List<Object[]> rows = new ArrayList<>(lines.size());
        for (VotedElsewhere line : lines) {
            PersonName name = line.name();
            rows.add(new Object[] {
                id.value(),
                snapshot,
                rows.size() + 1,
                name.last(),
                name.first(),
                name.middle(),
                name.suffix(),
                line.birthDate(),
                line.idLast4(),
                line.driversLicense(),
                line.county(),
                line.how(),
                line.on()
            });
        }
        insert(
                "voted_elsewhere (election_id, snapshot_no, row_no, last_name, first_name, middle_name, suffix,"
                        + " birth_date, id_last4, drivers_license, county, how, voted_on)",
                rows);
    }

    private void insert(String columns, List<Object[]> rows) {
        int width = columns.split(",").length;
        String sql = "insert into " + columns + " values (?" + ", ?".repeat(width - 1) + ")";
        jdbc.batchUpdate(sql, rows, BATCH, (statement, row) -> {
            for (int i = 0; i < row.length; i++) {
                statement.setObject(i + 1, row[i]);
            }
        });
    }

    List<MailBallot> mailBallots(ElectionId id, VoterId voterId) {
        String sql = inUse("mail_ballot", SnapshotKind.MAIL_BALLOTS) + " and t.voter_id = ? order by t.row_no";
        return jdbc.query(sql, BALLOT, id.value(), id.value(), voterId.value());
    }

    /** The mail ballots of several voters, by voter. */
    Map<VoterId, List<MailBallot>> mailBallots(ElectionId id, Collection<VoterId> voterIds) {
        return byVoter("mail_ballot", SnapshotKind.MAIL_BALLOTS, BALLOT, id, voterIds);
    }

    /** What the poll books have of several voters, by voter. */
    Map<VoterId, List<CheckIn>> checkIns(ElectionId id, Collection<VoterId> voterIds) {
        return byVoter("check_in", SnapshotKind.CHECK_INS, CHECK_IN, id, voterIds);
    }

    private <T> Map<VoterId, List<T>> byVoter(
            String table, SnapshotKind kind, RowMapper<T> mapper, ElectionId id, Collection<VoterId> voterIds) {
        Map<VoterId, List<T>> found = new HashMap<>();
        jdbc.query(
                wanted(table, kind) + " and t.voter_id = wanted.id order by t.row_no",
                row -> {
                    found.computeIfAbsent(new VoterId(row.getString("voter_id")), any -> new ArrayList<>())
                            .add(mapper.mapRow(row, 0));
                },
                voterIds.stream().map(Key::value).toArray(String[]::new),
                id.value(),
                id.value());
        return found;
    }

    List<MailBallot> mailBallots(ElectionId id, int snapshot, VoterId voterId) {
        return jdbc.query(in("mail_ballot"), BALLOT, id.value(), snapshot, voterId.value());
    }

    List<CheckIn> checkIns(ElectionId id, VoterId voterId) {
        String sql = inUse("check_in", SnapshotKind.CHECK_INS) + " and t.voter_id = ? order by t.row_no";
        return jdbc.query(sql, CHECK_IN, id.value(), id.value(), voterId.value());
    }

    List<CheckIn> checkIns(ElectionId id, int snapshot, VoterId voterId) {
        return jdbc.query(in("check_in"), CHECK_IN, id.value(), snapshot, voterId.value());
    }

    /** One voter's rows of a snapshot that need not be in use. */
    private static String in(String table) {
        return "select * from " + table + " where election_id = ? and snapshot_no = ? and voter_id = ? order by row_no";
    }

    List<VotedElsewhere> votedElsewhere(ElectionId id) {
        return jdbc.query(
                inUse("voted_elsewhere", SnapshotKind.VOTED_ELSEWHERE) + " order by t.row_no",
                ELSEWHERE,
                id.value(),
                id.value());
    }

    /** Lines with one of two birth dates or one of two licenses; a date or license not given finds nothing. */
    List<VotedElsewhere> votedElsewhere(ElectionId id, List<@Nullable LocalDate> births, List<String> licenses) {
        return jdbc.query(
                inUse("voted_elsewhere", SnapshotKind.VOTED_ELSEWHERE)
                        + " and (t.birth_date = ? or t.birth_date = ?"
                        + " or t.drivers_license <> '' and t.drivers_license in (?, ?)) order by t.row_no",
                ELSEWHERE,
                id.value(),
                id.value(),
                births.get(0),
                births.get(1),
                licenses.get(0),
                licenses.get(1));
    }

    /** Lines with one of these birth dates or licenses, in the order of the file. */
    List<VotedElsewhere> votedElsewhere(ElectionId id, Set<LocalDate> births, Set<String> licenses) {
        String line = wanted("voted_elsewhere", SnapshotKind.VOTED_ELSEWHERE);
        return jdbc.query(
                line + " and t.birth_date = cast(wanted.id as date) union " + line
                        + " and t.drivers_license = wanted.id order by row_no",
                ELSEWHERE,
                births.stream().map(LocalDate::toString).toArray(String[]::new),
                id.value(),
                id.value(),
                licenses.toArray(String[]::new),
                id.value(),
                id.value());
    }

    /** A list in use beside what is wanted of it. */
    private static String wanted(String table, SnapshotKind kind) {
        return "select t.* from unnest(cast(? as varchar array)) as wanted (id) join " + table
                + " t on t.election_id = ? and t.snapshot_no = (select snapshot_no from current_snapshot"
                + " where election_id = ? and kind = '" + kind.code() + "')";
    }

    static VotedElsewhere elsewhere(ResultSet row) throws SQLException {
        return new VotedElsewhere(
                new PersonName(
                        row.getString("last_name"),
                        row.getString("first_name"),
                        row.getString("middle_name"),
                        row.getString("suffix")),
                row.getObject("birth_date", LocalDate.class),
                row.getString("id_last4"),
                row.getString("drivers_license"),
                row.getString("county"),
                row.getString("how"),
                row.getObject("voted_on", LocalDate.class));
    }

    /** Takes the election twice: a join would let a database walk the whole list for one voter. */
    private static String inUse(String table, SnapshotKind kind) {
        return "select t.* from " + table + " t where t.snapshot_no = (select snapshot_no from current_snapshot"
                + " where election_id = ? and kind = '" + kind.code() + "') and t.election_id = ?";
    }
}
