package org.proviso.election.clock;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of a demonstration's clock: one row, or none where it was never set. */
@Repository
class OfficeClockStore {

    private final JdbcClient jdbc;

    OfficeClockStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<KeptClock> find() {
        return jdbc.sql("select ahead_millis, not_before from office_clock")
                .query((row, number) -> new KeptClock(
                        Duration.ofMillis(row.getLong("ahead_millis")),
                        row.getObject("not_before", OffsetDateTime.class).toInstant()))
                .optional();
    }

    void keep(KeptClock clock) {
        jdbc.sql("delete from office_clock").update();
        jdbc.sql("insert into office_clock (clock_no, ahead_millis, not_before) values (1, ?, ?)")
                .params(clock.ahead().toMillis(), OffsetDateTime.ofInstant(clock.notBefore(), ZoneOffset.UTC))
                .update();
    }
}
