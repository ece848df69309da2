package org.proviso.election;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.core.adjudication.kept.PackJson;
import org.proviso.core.rules.ResolvedPack;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of rule packs as resolved for an election: a row is added for each that was in force, never changed. */
@Repository
class ResolvedPackStore {

    private final JdbcClient jdbc;
    private final Clock clock;

    ResolvedPackStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** Keeps a pack with why it was taken: bundled, so proved in the build; proved; overridden. One kept stays as it is. */
    void keep(ElectionId electionId, ResolvedPack pack, String acceptedBecause) {
        if (isKept(electionId, pack.hash())) {
            return;
        }
        jdbc.sql("""
                        insert into resolved_pack (election_id, pack_hash, pack_id, content, accepted_because,
                            accepted_at)
                        values (?, ?, ?, ?, ?, ?)""")
                .params(
                        electionId,
                        pack.hash(),
                        pack.pack().id(),
                        PackJson.write(pack),
                        acceptedBecause,
                        OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC))
                .update();
    }

    boolean isKept(ElectionId electionId, String hash) {
        return jdbc.sql("select count(*) from resolved_pack where election_id = ? and pack_hash = ?")
                        .params(electionId, hash)
                        .query(Integer.class)
                        .single()
                > 0;
    }

    Optional<String> content(ElectionId electionId, String hash) {
        return jdbc.sql("select content from resolved_pack where election_id = ? and pack_hash = ?")
                .params(electionId, hash)
                .query(String.class)
                .optional();
    }
}
