package org.proviso.journey;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.proviso.core.chain.LedgerEntry;

/** What a killed office had acknowledged, beside what its database holds. */
final class KilledState {

    /** What does not fit: between the database's own tables, and between them and what was acknowledged. */
    record Found(List<String> torn, List<String> lost) {}

    /** How often each act was acknowledged, by "act envelope". */
    private final Map<String, Integer> acknowledged = new HashMap<>();

    private final Map<String, Integer> versions = new HashMap<>();

    /** By envelope how many more versions than entries its case has; an act adds one of each. */
    private final Map<String, Integer> ahead = new HashMap<>();

    private long acts;

    void note(List<String> lines) {
        for (String line : lines) {
            String[] words = line.split(" ");
            acknowledged.merge(words[0] + " " + words[1], 1, Integer::sum);
            versions.merge(words[1], Integer.parseInt(words[3]), Math::max);
            acts++;
        }
    }

    long acts() {
        return acts;
    }

    Found compare(String url, String user) throws SQLException {
        List<String> torn = new ArrayList<>();
        List<String> lost = new ArrayList<>();
        try (Connection database = DriverManager.getConnection(url, user, "");
                Statement statement = database.createStatement()) {
            chain(statement, torn);
            Map<String, Integer> entries = counts(statement, "select subject, count(*) from ledger group by subject");
            Map<String, Integer> now = counts(statement, "select envelope_no, version from envelope_case");
            now.forEach((envelope, version) -> {
                int more = version - entries.getOrDefault(envelope, 0);
                Integer before = ahead.putIfAbsent(envelope, more);
                if (before != null && before != more) {
                    torn.add("case " + envelope + " has version " + version + ", its entries say " + (version - more));
                }
            });
            Map<String, Integer> inLedger = counts(
                    statement, "select act || ' ' || subject, count(*) from ledger group by act || ' ' || subject");
            acknowledged.forEach((act, times) -> {
                if (inLedger.getOrDefault(act, 0) < times) {
                    lost.add(act + " was acknowledged " + times + " times and recorded " + inLedger.get(act));
                }
            });
            versions.forEach((envelope, version) -> {
                if (now.getOrDefault(envelope, 0) < version) {
                    lost.add(envelope + " was acknowledged in version " + version + " and is in " + now.get(envelope));
                }
            });
        }
        return new Found(torn, lost);
    }

    /** Every entry follows the one before it, and the head names the last. */
    private static void chain(Statement statement, List<String> torn) throws SQLException {
        Map<String, String> last = new HashMap<>();
        try (ResultSet row = statement.executeQuery(
                "select chain, sequence, previous_hash, hash from ledger order by chain, sequence")) {
            while (row.next()) {
                String before = last.put(row.getString(1), row.getString(4));
                if (!row.getString(3).equals(before == null ? LedgerEntry.BEFORE_FIRST : before)) {
                    torn.add("entry " + row.getLong(2) + " does not follow the one before it");
                }
            }
        }
        try (ResultSet row = statement.executeQuery("select chain, sequence, hash from ledger_head")) {
            while (row.next()) {
                String end = last.getOrDefault(row.getString(1), LedgerEntry.BEFORE_FIRST);
                if (!row.getString(3).equals(end)) {
                    torn.add("the head of " + row.getString(1) + " is entry " + row.getLong(2) + ", not the last one");
                }
            }
        }
    }

    private static Map<String, Integer> counts(Statement statement, String sql) throws SQLException {
        Map<String, Integer> counts = new HashMap<>();
        try (ResultSet row = statement.executeQuery(sql)) {
            while (row.next()) {
                counts.put(row.getString(1), row.getInt(2));
            }
        }
        return counts;
    }
}
