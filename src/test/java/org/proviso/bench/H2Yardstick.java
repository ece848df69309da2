package org.proviso.bench;

import java.io.IOException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Locale;
import java.util.Map;

/** The same job as a naive join in H2, in memory: {@code ROLL ENVELOPES LINKS}. */
final class H2Yardstick {

    private H2Yardstick() {}

    public static void main(String[] arguments) throws SQLException, IOException {
        long start = System.nanoTime();
        try (Connection h2 = DriverManager.getConnection("jdbc:h2:mem:yardstick");
                Statement statement = h2.createStatement()) {
            Script.run(
                    statement,
                    "h2.sql",
                    Map.of("roll", arguments[0], "envelopes", arguments[1], "links", arguments[2]));
        }
        System.out.printf(Locale.ROOT, "seconds %.3f%n", (System.nanoTime() - start) / 1e9);
    }
}
