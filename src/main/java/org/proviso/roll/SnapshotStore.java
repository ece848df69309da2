package org.proviso.roll;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The tables that say which lists were loaded and which one of each kind is in use. */
@Repository
class SnapshotStore {

    private final JdbcClient jdbc;
    private final Clock clock;

    SnapshotStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** A new snapshot without rows, not yet in use; its number is the next of the election. */
    int add(String electionId, SnapshotKind kind, String contentHash, int rows) {
        int number = jdbc.sql("select coalesce(max(snapshot_no), 0) + 1 from snapshot where election_id = ?")
                .param(electionId)
                .query(Integer.class)
                .single();
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

    int inUse(String electionId, SnapshotKind kind) {
        return jdbc.sql("select snapshot_no from current_snapshot where election_id = ? and kind = ?")
                .params(electionId, kind.code())
                .query(Integer.class)
                .single();
    }

    /** Puts a snapshot in use in place of the one before. */
    void use(String electionId, SnapshotKind kind, int number) {
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
