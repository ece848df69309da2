package org.proviso.database;

import static org.assertj.core.api.Assertions.assertThat;

import com.zaxxer.hikari.HikariDataSource;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.simple.JdbcClient;

/** An office that worked with the schema of before keeps its data when the schema changes. */
class EarlierDataTest {

    private static final String BEFORE_RECEIPTS_WERE_SHARED = "081";

    private static void migrate(DatabaseKind kind, HikariDataSource database, String target) {
        Flyway.configure()
                .dataSource(database)
                .locations(kind.migrations())
                .target(target)
                .load()
                .migrate();
    }

    @ParameterizedTest
    @EnumSource
    void receipt_numbers_and_the_lines_of_the_look_up_are_as_before(DatabaseKind kind) {
        try (HikariDataSource database = kind.open()) {
            migrate(kind, database, BEFORE_RECEIPTS_WERE_SHARED);
            JdbcClient jdbc = JdbcClient.create(database);
            Rows rows = new Rows(jdbc);
            rows.election("one");
            rows.envelope("one", "E-1", "ab-12 3");
            rows.envelope("one", "E-2", "");
            jdbc.sql("""
                            insert into status_line (key_hash, receipt_hash, election_id, state, reasons, asks, changed_at)
                            values (repeat('a', 64), repeat('b', 64), 'one', 'received', '', '', current_timestamp)""").update();
            migrate(kind, database, "latest");
            assertThat(jdbc.sql("select receipt_no || '/' || receipt_compared from envelope order by envelope_no")
                            .query(String.class)
                            .list())
                    .containsExactly("ab-12 3/AB123", "/");
            rows.envelope("one", "E-3", "ab-12 3");
            assertThat(jdbc.sql("select key_hash || '/' || envelope_hash || '/' || receipt_hash from status_line")
                            .query(String.class)
                            .single())
                    .isEqualTo("a".repeat(64) + "/" + "b".repeat(64) + "/" + "b".repeat(64));
        }
    }
}
