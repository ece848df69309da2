package org.proviso.roll;

import org.proviso.core.ElectionId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Copies the rows of a list into a newer one, within the database. */
@Repository
class ListCopyStore {

    private static final String MAIL = "voter_id, serial, issued_on, state, state_on";
    private static final String BOOKS = "voter_id, voting_location, checked_in_at, kind, ballot_issued, cancelled_at";
    private static final String STATE =
            "last_name, first_name, middle_name, suffix, birth_date, id_last4, drivers_license, county, how, voted_on";

    private final JdbcClient jdbc;

    ListCopyStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Copies every row, numbered after the one row that the newer list has already. */
    void copy(ElectionId id, SnapshotKind kind, int from, int to) {
        String columns = columns(kind);
        jdbc.sql(
                        "insert into %1$s (election_id, snapshot_no, row_no, %2$s) select election_id, cast(? as integer), row_no + 1, %2$s"
                                        .formatted(SnapshotStore.table(kind), columns)
                                + " from " + SnapshotStore.table(kind)
                                + " where election_id = ? and snapshot_no = ?")
                .params(to, id, from)
                .update();
    }

    /** Whether a row of one list has the key of a row of the other: the voter, or the voter and the ballot. */
    boolean sharesKey(ElectionId id, SnapshotKind kind, int one, int other) {
        String same = switch (kind) {
            case ROLL -> "a.voter_id = b.voter_id";
            case MAIL_BALLOTS -> "a.voter_id = b.voter_id and a.serial = b.serial";
            case CHECK_INS, VOTED_ELSEWHERE -> "1 = 0";
        };
        String table = SnapshotStore.table(kind);
        return jdbc.sql("select count(*) from " + table + " a join " + table + " b on b.election_id = a.election_id"
                                + " and b.snapshot_no = ? and " + same
                                + " where a.election_id = ? and a.snapshot_no = ?")
                        .params(one, id, other)
                        .query(Integer.class)
                        .single()
                > 0;
    }

    private static String columns(SnapshotKind kind) {
        return switch (kind) {
            case ROLL -> "voter_id, " + String.join(", ", VoterStore.CONTENT);
            case MAIL_BALLOTS -> MAIL;
            case CHECK_INS -> BOOKS;
            case VOTED_ELSEWHERE -> STATE;
        };
    }
}
