package org.proviso.roll;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Locale;
import org.postgresql.PGConnection;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;

/** Loads a file of checked rows into a table by the database's own means, within the transaction that runs. */
@Repository
class BulkLoadStore {

    private final JdbcTemplate jdbc;

    BulkLoadStore(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** The columns are those of the file, in its order. */
    void load(String table, String columns, Path file) {
        jdbc.execute((Connection connection) -> {
            String product = connection.getMetaData().getDatabaseProductName();
            if (product.equals("PostgreSQL")) {
                copy(connection, "copy " + table + " (" + columns + ") from stdin (format csv)", file);
            } else {
                read(connection, table, columns, file);
            }
            return null;
        });
    }

    /**
     * Has the database count what was loaded, so that it plans what follows in the same transaction by it: without,
     * PostgreSQL looks for the differences of two rolls row by row. H2 does it by itself.
     */
    void count(String table) {
        jdbc.execute((Connection connection) -> {
            if (connection.getMetaData().getDatabaseProductName().equals("PostgreSQL")) {
                try (Statement statement = connection.createStatement()) {
                    statement.execute("analyze " + table);
                }
            }
            return null;
        });
    }

    private static void copy(Connection connection, String sql, Path file) throws SQLException {
        try (InputStream rows = Files.newInputStream(file)) {
            connection.unwrap(PGConnection.class).getCopyAPI().copyIn(sql, rows);
        } catch (IOException e) {
            throw new UncheckedIOException("The temporary file of rows cannot be read.", e);
        }
    }

    /** H2 opens the file itself; its names are in capitals. */
    private static void read(Connection connection, String table, String columns, Path file) throws SQLException {
        String names = columns.replaceAll("\\s", "").toUpperCase(Locale.ROOT);
        String path = file.toAbsolutePath().toString().replace("'", "''");
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate("insert into " + table + " (" + columns + ") select " + columns + " from csvread('"
                    + path + "', '" + names + "', 'charset=UTF-8')");
        }
    }
}
