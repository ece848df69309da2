package org.proviso.review.facts;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.Set;
import org.proviso.core.ElectionId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of deadlines that passed. */
@Repository
public class DeadlineStore {

    private final JdbcClient jdbc;
    private final Clock clock;

    DeadlineStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** A deadline that passed, at its last moment on the county's clock. */
    public record Passed(String rule, LocalDateTime passedAt) {}

    public Set<Passed> passed(ElectionId electionId) {
        return new HashSet<>(jdbc.sql("select rule, passed_at from deadline_passed where election_id = ?")
                .param(electionId)
                .query(Passed.class)
                .list());
    }

    /** Only one node can record it: another one's row is refused by its key. */
    public void insert(ElectionId electionId, String rule, LocalDateTime passedAt) {
        jdbc.sql("insert into deadline_passed (election_id, rule, passed_at, recorded_at) values (?, ?, ?, ?)")
                .params(electionId, rule, passedAt, OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC))
                .update();
    }
}
