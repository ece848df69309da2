package org.proviso.database;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.opentest4j.TestAbortedException;

/** A PostgreSQL server for this run of the tests, started when the first test asks for it. */
final class PostgresServer {

    private static final AtomicInteger DATABASES = new AtomicInteger();
    private static @Nullable EmbeddedPostgres server;
    private static @Nullable String whyNot;

    private PostgresServer() {}

    /** The address of a new, empty database. */
    static synchronized String url() {
        EmbeddedPostgres running = started();
        String name = "proviso" + DATABASES.incrementAndGet();
        try (Connection connection = running.getPostgresDatabase().getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("create database " + name);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
        return running.getJdbcUrl("postgres", name);
    }

    private static EmbeddedPostgres started() {
        if (server == null && whyNot == null) {
            try {
                server = EmbeddedPostgres.builder().start();
            } catch (IOException | RuntimeException e) {
                whyNot = "no PostgreSQL server can be started here (" + e.getMessage() + ")";
                System.err.println("skipped: tests on PostgreSQL, " + whyNot);
            }
        }
        if (server == null) {
            throw absence();
        }
        return server;
    }

    private static RuntimeException absence() {
        return "true".equals(System.getenv("CI"))
                ? new IllegalStateException(whyNot)
                : new TestAbortedException("skipped: " + whyNot);
    }
}
