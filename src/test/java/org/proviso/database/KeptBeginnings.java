package org.proviso.database;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * What tests begin with on one database: the rows as they were when it was first made ready, kept in a schema beside the
 * office's, and copied back in one transaction. A copy inside the database takes a few hundredths of a second, and the
 * services keep their connections.
 */
final class KeptBeginnings {

    private record Beginning(String schema, List<String> tables, Instant clock) {}

    private final DatabaseKind kind;
    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;
    private final Map<String, Beginning> kept = new HashMap<>();

    KeptBeginnings(DatabaseKind kind, JdbcClient jdbc, TransactionTemplate transaction) {
        this.kind = kind;
        this.jdbc = jdbc;
        this.transaction = transaction;
    }

    /** Keeps the rows that are there now, and what the office's clock shows. */
    void keep(String name, List<String> tables, Instant clock) {
        String schema = "beginning_" + kept.size();
        List<String> filled = tables.stream().filter(this::hasRows).toList();
        jdbc.sql("create schema " + schema).update();
        filled.forEach(table -> jdbc.sql("create table " + schema + "." + table + " as select * from public." + table)
                .update());
        kept.put(name, new Beginning(schema, filled, clock));
    }

    private boolean hasRows(String table) {
        return jdbc.sql("select exists (select 1 from public." + table + ")")
                .query(Boolean.class)
                .single();
    }

    /** Fills the empty tables as they were kept; what the clock showed then, or null where nothing is kept. */
    @Nullable
    Instant putBack(String name) {
        Beginning beginning = kept.get(name);
        if (beginning == null) {
            return null;
        }
        if (kind == DatabaseKind.H2) {
            jdbc.sql("set referential_integrity false").update();
            fill(beginning);
            jdbc.sql("set referential_integrity true").update();
        } else {
            transaction.executeWithoutResult(copying -> {
                // The rows were checked when they were first written: no foreign key and no trigger is asked again.
                jdbc.sql("set local session_replication_role = replica").update();
                fill(beginning);
            });
        }
        return beginning.clock();
    }

    private void fill(Beginning beginning) {
        transaction.executeWithoutResult(copying -> {
            jdbc.sql("delete from ledger_head").update();
            beginning
                    .tables()
                    .forEach(table -> jdbc.sql("insert into public." + table + " select * from " + beginning.schema()
                                    + "." + table)
                            .update());
        });
    }
}
