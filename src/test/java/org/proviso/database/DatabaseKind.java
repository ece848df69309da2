package org.proviso.database;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** The two databases of the office. */
public enum DatabaseKind {
    H2 {
        @Override
        String url() {
            try {
                Path folder = Files.createTempDirectory(Path.of("target"), "h2-");
                return "jdbc:h2:file:" + folder.toAbsolutePath().resolve("proviso")
                        + ";WRITE_DELAY=0;LOCK_TIMEOUT=10000";
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    },
    POSTGRESQL {
        @Override
        String url() {
            return PostgresServer.url();
        }
    };

    private static final int CONNECTIONS = 24;

    /** Where its database is; may skip or fail the running test where there is no server. */
    abstract String url();

    /** The address of a new, empty database; fails where there is no server. */
    public String newUrl() {
        return url();
    }

    /** Connections to a database of its own, not yet migrated. */
    public HikariDataSource open() {
        return open(url());
    }

    HikariDataSource open(String url) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl(url);
        config.setUsername(this == H2 ? "sa" : "postgres");
        if (this == POSTGRESQL) {
            config.addDataSourceProperty("reWriteBatchedInserts", "true");
        }
        config.setMaximumPoolSize(CONNECTIONS);
        return new HikariDataSource(config);
    }

    /** Where its migrations lie. */
    public String[] migrations() {
        return new String[] {
            "classpath:db/migration/common", "classpath:db/migration/" + name().toLowerCase(Locale.ROOT)
        };
    }
}
