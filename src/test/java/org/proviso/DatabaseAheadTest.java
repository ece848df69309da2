package org.proviso;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.support.GenericApplicationContext;
import org.springframework.core.env.MapPropertySource;

/** The database file is made ready while the server still starts. */
class DatabaseAheadTest {

    private static final String TABLES = "classpath:db/migration/common,classpath:db/migration/{vendor}";

    @TempDir
    Path data;

    private static GenericApplicationContext server(String url, String locations) {
        GenericApplicationContext server = new GenericApplicationContext();
        server.getEnvironment()
                .getPropertySources()
                .addFirst(new MapPropertySource(
                        "start",
                        Map.of(
                                "spring.datasource.url", url,
                                "spring.datasource.username", "sa",
                                "spring.flyway.locations", locations)));
        return server;
    }

    private String file() {
        return "jdbc:h2:file:" + data.resolve("proviso");
    }

    private static int cases(String url) {
        try (Connection look = DriverManager.getConnection(url, "sa", "");
                ResultSet count = look.createStatement().executeQuery("select count(*) from envelope_case")) {
            count.next();
            return count.getInt(1);
        } catch (SQLException missing) {
            return -1;
        }
    }

    @Test
    void the_start_looks_when_all_tables_are_there() {
        DatabaseAhead ahead = new DatabaseAhead();
        List<Integer> seen = new ArrayList<>();
        ahead.initialize(server(file(), TABLES));
        ahead.then(() -> seen.add(cases(file())));
        assertThat(seen).containsExactly(0);
    }

    @Test
    void what_goes_wrong_ahead_is_left_to_the_start_to_say() {
        DatabaseAhead ahead = new DatabaseAhead();
        List<Integer> seen = new ArrayList<>();
        ahead.initialize(server(file() + ";MODE=NONSENSE", TABLES));
        ahead.then(() -> seen.add(cases(file())));
        assertThat(seen).as("the start looked, and there is no table").containsExactly(-1);
    }

    @Test
    void a_database_server_is_not_asked_ahead() {
        GenericApplicationContext server = server("jdbc:postgresql://localhost:1/proviso", TABLES);
        new DatabaseAhead().initialize(server);
        assertThat(server.getBeanFactory().containsSingleton("databaseAhead")).isFalse();
    }
}
