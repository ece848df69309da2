package org.proviso.browser;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;

/**
 * Multiplies the envelopes of a demonstration until there are so many, with all that hangs on them, to look at pages of a
 * large office. A command over the data folder of a stopped server; its ledger no longer fits its tables.
 */
public final class ManyEnvelopes {

    private static final String COLUMNS = "select lower(column_name) from information_schema.columns"
            + " where lower(table_name) = ? and is_generated = 'NEVER' and is_identity = 'NO' order by ordinal_position";

    private static final Set<String> OWN = Set.of("envelope_no", "receipt_no");

    private ManyEnvelopes() {}

    public static void main(String[] arguments) {
        Path folder = Path.of(arguments[0]).toAbsolutePath();
        int wanted = Integer.parseInt(arguments[1]);
        SingleConnectionDataSource file =
                new SingleConnectionDataSource("jdbc:h2:file:" + folder.resolve("proviso"), "sa", "", true);
        JdbcClient jdbc = JdbcClient.create(file);
        List<String> tables = jdbc.sql("select lower(table_name) from information_schema.columns"
                        + " where lower(column_name) = 'envelope_no' order by case lower(table_name)"
                        + " when 'envelope' then 1 when 'affirmation' then 2 when 'envelope_case' then 3 else 4 end")
                .query(String.class)
                .list();
        for (int copy = 1; count(jdbc) < wanted; copy++) {
            for (String table : tables) {
                copy(jdbc, table, copy);
            }
        }
        System.out.println(count(jdbc) + " envelopes");
        file.destroy();
    }

    private static void copy(JdbcClient jdbc, String table, int copy) {
        String end = " || '-" + copy + "'";
        List<String> columns =
                jdbc.sql(COLUMNS).param(table).query(String.class).list();
        String copied = columns.stream()
                .map(column -> OWN.contains(column) || column.endsWith("_compared") ? column + end : column)
                .collect(Collectors.joining(", "));
        try {
            jdbc.sql("insert into " + table + " (" + String.join(", ", columns) + ") select " + copied + " from "
                            + table + " where envelope_no not like '%-%-%'")
                    .update();
        } catch (DataAccessException e) {
            if (copy == 1) {
                System.out.println(
                        "left out: " + table + ", " + e.getMostSpecificCause().getMessage());
            }
        }
    }

    private static long count(JdbcClient jdbc) {
        return jdbc.sql("select count(*) from envelope").query(Long.class).single();
    }
}
