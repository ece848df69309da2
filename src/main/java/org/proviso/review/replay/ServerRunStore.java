package org.proviso.review.replay;

import java.time.Instant;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** The table that says whether a server runs over this database. */
@Repository
class ServerRunStore {

    private final JdbcClient jdbc;

    ServerRunStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Notes that a server runs; whether one before it was not stopped. */
    @Transactional
    boolean begin(Instant at) {
        boolean wasThere = jdbc.sql("delete from server_run").update() > 0;
        jdbc.sql("insert into server_run (only_one, started_at) values (1, ?)")
                .param(at)
                .update();
        return wasThere;
    }

    @Transactional
    void end() {
        jdbc.sql("delete from server_run").update();
    }
}
