package org.proviso.roll;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The tables that say which lists were loaded and which one of each kind is in use. */
@Repository
class SnapshotStore {

    private static final String SELECT =
            "select s.snapshot_no as number, s.kind, s.row_count as \"rows\" from snapshot s where s.election_id = ? and ";

    private final JdbcClient jdbc;
    private final Clock clock;

    SnapshotStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** A new snapshot without rows, not yet in use; its number is the next of the election. */
    int add(ElectionId electionId, SnapshotKind kind, String contentHash, int rows) {
        int number = next(electionId);
        jdbc.sql("""
                        insert into snapshot (election_id, snapshot_no, kind, content_hash, row_count, loaded_at)
                        values (?, ?, ?, ?, ?, ?)""")
                .params(
                        electionId,
                        number,
                        kind.code(),
                        contentHash,
                        rows,
                        OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC))
                .update();
        return number;
    }

    /** The number that the next snapshot of the election gets. */
    int next(ElectionId electionId) {
        return jdbc.sql("select coalesce(max(snapshot_no), 0) + 1 from snapshot where election_id = ?")
                .param(electionId)
                .query(Integer.class)
                .single();
    }

    /** A list that was never put in use goes, with its rows. */
    void remove(ElectionId electionId, Snapshot snapshot) {
        for (String table : List.of(table(snapshot.kind()), "snapshot")) {
            jdbc.sql("delete from " + table + " where election_id = ? and snapshot_no = ?")
                    .params(electionId, snapshot.number())
                    .update();
        }
    }

    /** The table of a kind's rows. */
    static String table(SnapshotKind kind) {
        return switch (kind) {
            case ROLL -> "voter";
            case MAIL_BALLOTS -> "mail_ballot";
            case CHECK_INS -> "check_in";
            case VOTED_ELSEWHERE -> "voted_elsewhere";
        };
    }

    /** Says how many rows a snapshot has that was counted while it was written. */
    void count(ElectionId electionId, int number, int rows) {
        jdbc.sql("update snapshot set row_count = ? where election_id = ? and snapshot_no = ?")
                .params(rows, electionId, number)
                .update();
    }

    /** The newest snapshot of that kind with that content. */
    Optional<Snapshot> withContent(ElectionId electionId, SnapshotKind kind, String contentHash) {
        return jdbc
                .sql(SELECT + "s.kind = ? and s.content_hash = ? order by s.snapshot_no desc")
                .params(electionId, kind.code(), contentHash)
                .query(Snapshot.class)
                .list()
                .stream()
                .findFirst();
    }

    Optional<Snapshot> find(ElectionId electionId, int number) {
        return jdbc.sql(SELECT + "s.snapshot_no = ?")
                .params(electionId, number)
                .query(Snapshot.class)
                .optional();
    }

    /** Every list of an election, by kind, the newest first. */
    List<HeldList> all(ElectionId electionId) {
        return jdbc.sql("""
                        select s.*, s.row_count as "rows", c.snapshot_no is not null as in_use,
                            coalesce(a.rows_aside, 0) as rows_aside
                        from snapshot s left join current_snapshot c on c.election_id = s.election_id
                            and c.kind = s.kind and c.snapshot_no = s.snapshot_no
                        left join set_aside_list a on a.election_id = s.election_id and a.snapshot_no = s.snapshot_no
                        where s.election_id = ? order by s.kind, s.snapshot_no desc""").param(electionId).query(HeldList.class).list();
    }

    /** Of a list by its number. */
    String hashOf(ElectionId electionId, int number) {
        return jdbc.sql("select content_hash from snapshot where election_id = ? and snapshot_no = ?")
                .params(electionId, number)
                .query(String.class)
                .single();
    }

    /** Of the list in use. */
    String contentHash(ElectionId electionId, SnapshotKind kind) {
        return jdbc.sql("""
                        select content_hash from snapshot where election_id = ? and snapshot_no = (
                            select snapshot_no from current_snapshot where election_id = ? and kind = ?)""")
                .params(electionId, electionId, kind.code())
                .query(String.class)
                .single();
    }

    int inUse(ElectionId electionId, SnapshotKind kind) {
        return jdbc.sql("select snapshot_no from current_snapshot where election_id = ? and kind = ?")
                .params(electionId, kind.code())
                .query(Integer.class)
                .single();
    }

    /** Puts a snapshot in use in place of the one before. */
    void use(ElectionId electionId, SnapshotKind kind, int number) {
        int switched = jdbc.sql("""
                        update current_snapshot set snapshot_no = ?, version = version + 1
                        where election_id = ? and kind = ?""").params(number, electionId, kind.code()).update();
        if (switched == 0) {
            jdbc.sql("insert into current_snapshot (election_id, kind, snapshot_no, version) values (?, ?, ?, 0)")
                    .params(electionId, kind.code(), number)
                    .update();
        }
    }
}
