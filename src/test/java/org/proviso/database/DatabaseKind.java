package org.proviso.database;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.util.Locale;
import java.util.UUID;

/** The two databases of the office. */
public enum DatabaseKind {
    H2 {
        /** In memory: the same engine without the disk, which took a third of the time. Tests of kills use a file. */
        @Override
        String url() {
            return "jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1;LOCK_TIMEOUT=10000";
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
