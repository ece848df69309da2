package org.proviso.election;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of who agreed to load which files without which rows, before a second person does. */
@Repository
class AgreedLoadStore {

    private final JdbcClient jdbc;
    private final Clock clock;

    AgreedLoadStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** Who agreed, and why. */
    record Agreed(UserName by, String because) {}

    Optional<Agreed> find(ElectionId electionId, String contentHash, String rowsHash) {
        return jdbc.sql(
                        "select agreed_by, because from set_aside_agreed where election_id = ? and content_hash = ? and rows_hash = ?")
                .params(electionId, contentHash, rowsHash)
                .query((row, number) -> new Agreed(new UserName(row.getString(1)), row.getString(2)))
                .optional();
    }

    void add(ElectionId electionId, String contentHash, String rowsHash, String because, UserName by) {
        jdbc.sql("""
                        insert into set_aside_agreed (election_id, content_hash, rows_hash, because, agreed_by, agreed_at)
                        values (?, ?, ?, ?, ?, ?)""")
                .params(
                        electionId,
                        contentHash,
                        rowsHash,
                        because,
                        by,
                        OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC))
                .update();
    }
}
