package org.proviso.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The same job as a join in DuckDB. {@code train ROLL ENVELOPES TRUTH WEIGHTS} learns a weight for each grade from the
 * truth of a tenth of the envelopes; {@code link ROLL ENVELOPES LINKS WEIGHTS} opens the files, joins, and writes links.
 */
final class DuckYardstick {

    private static final List<String> FIELDS =
            List.of("g_last", "g_first", "g_middle", "g_suffix", "g_born", "g_last4", "g_home", "g_often");
    private static final int GRADES = 8;

    private DuckYardstick() {}

    public static void main(String[] arguments) throws SQLException, IOException {
        long start = System.nanoTime();
        boolean trains = arguments[0].equals("train");
        try (Connection duck = DriverManager.getConnection("jdbc:duckdb:");
                Statement statement = duck.createStatement()) {
            Script.run(
                    statement,
                    "duckdb.sql",
                    Map.of(
                            "roll", arguments[1],
                            "envelopes", arguments[2],
                            "sample", trains ? "using sample 10% (reservoir, 7)" : ""));
            if (trains) {
                Files.writeString(Path.of(arguments[4]), weights(statement, arguments[3]));
            } else {
                String score = Files.readString(Path.of(arguments[4])).strip();
                Script.run(statement, "duckdb-links.sql", Map.of("links", arguments[3], "score", score));
            }
        }
        System.out.printf(Locale.ROOT, "seconds %.3f%n", (System.nanoTime() - start) / 1e9);
    }

    /** The sum of weights as an expression: for each field a list from which the grade picks. */
    private static String weights(Statement statement, String truth) throws SQLException {
        statement.execute("create table truth as select * from read_csv('" + truth
                + "', header = true, all_varchar = true, nullstr = '~')");
        List<String> terms = new ArrayList<>();
        for (String field : FIELDS) {
            double[][] counts = new double[2][GRADES];
            String sql = "select graded.voter_id = truth.voter_id, " + field + ", count(*) from graded join truth "
                    + "using (envelope_no) group by all";
            try (ResultSet row = statement.executeQuery(sql)) {
                while (row.next()) {
                    counts[row.getBoolean(1) ? 1 : 0][row.getInt(2)] += row.getDouble(3);
                }
            }
            terms.add(picked(field, counts));
        }
        return String.join(" + ", terms);
    }

    private static String picked(String field, double[][] counts) {
        List<String> weights = new ArrayList<>();
        double others = sum(counts[0]);
        double own = sum(counts[1]);
        for (int grade = 0; grade < GRADES; grade++) {
            double m = (counts[1][grade] + 0.5) / (own + 0.5 * GRADES);
            double u = (counts[0][grade] + 0.5) / (others + 0.5 * GRADES);
            weights.add(String.format(Locale.ROOT, "%.3f", Math.log(m / u) / Math.log(2)));
        }
        return "[" + String.join(", ", weights) + "][" + field + " + 1]";
    }

    private static double sum(double[] counts) {
        double sum = 0;
        for (double count : counts) {
            sum += count;
        }
        return sum;
    }
}
