package org.proviso.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.Objects;

/** Runs an SQL file that lies beside this package, with values put in for its {@code ${names}}. */
final class Script {

    private Script() {}

    static void run(Statement statement, String script, Map<String, String> values) throws SQLException, IOException {
        InputStream file = Objects.requireNonNull(Script.class.getResourceAsStream(script), script);
        String sql = new String(file.readAllBytes(), StandardCharsets.UTF_8);
        for (Map.Entry<String, String> value : values.entrySet()) {
            sql = sql.replace("${" + value.getKey() + "}", value.getValue());
        }
        for (String command : sql.split(";\\s*\n")) {
            statement.execute(command);
        }
    }
}
