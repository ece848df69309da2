package org.proviso.database;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Clock;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.flywaydb.core.Flyway;
import org.jspecify.annotations.Nullable;
import org.proviso.status.StatusMemory;
import org.springframework.context.annotation.AnnotationConfigApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** The office's services over one migrated database; there is one for each kind in a run of the tests. */
public final class TestOffice {

    private static final Map<DatabaseKind, TestOffice> OPEN = new EnumMap<>(DatabaseKind.class);

    private final DatabaseKind kind;
    private final AnnotationConfigApplicationContext services;
    private @Nullable KeptBeginnings beginnings;

    private static TestOffice shared(DatabaseKind kind) {
        return new TestOffice(kind, kind.open()).keepingBeginnings();
    }

    private TestOffice keepingBeginnings() {
        beginnings = new KeptBeginnings(kind, jdbc(), the(TransactionTemplate.class));
        return this;
    }

    private TestOffice(DatabaseKind kind, HikariDataSource connections) {
        this.kind = kind;
        Flyway.configure()
                .dataSource(connections)
                .locations(kind.migrations())
                .load()
                .migrate();
        services = new AnnotationConfigApplicationContext();
        services.registerBean(HikariDataSource.class, () -> connections);
        services.register(TestOfficeServices.class);
        services.refresh();
    }

    /** The office on that kind of database; skips the running test where there is no server. */
    public static synchronized TestOffice on(DatabaseKind kind) {
        return OPEN.computeIfAbsent(kind, TestOffice::shared);
    }

    /** An office over an H2 database that may be there already; whoever opened it closes it. */
    public static TestOffice over(String h2Url) {
        return over(DatabaseKind.H2, h2Url);
    }

    /** The same for tests that begin anew again and again: what they begin with is kept. */
    public static TestOffice sharedOver(String h2Url) {
        return over(h2Url).keepingBeginnings();
    }

    /** The same over a database of either kind. */
    public static TestOffice over(DatabaseKind kind, String url) {
        return new TestOffice(kind, kind.open(url));
    }

    /** Lets the database go. */
    public void close() {
        the(HikariDataSource.class).close();
        services.close();
    }

    public DatabaseKind kind() {
        return kind;
    }

    /** A service of the office, with its transactions. */
    public <T> T the(Class<T> service) {
        return services.getBean(service);
    }

    /** For a test that looks at a table, or breaks one. */
    public JdbcClient jdbc() {
        return the(JdbcClient.class);
    }

    /** Does something in one transaction, as a service would. */
    public <T> T inTransaction(Supplier<T> act) {
        return the(TransactionTemplate.class).execute(status -> act.get());
    }

    /** Every table of the office in the order of its name. */
    public List<String> tables() {
        return jdbc().sql("""
                        select lower(table_name) from information_schema.tables
                        where lower(table_schema) = 'public' and lower(table_name) <> 'flyway_schema_history'
                        order by 1""").query(String.class).list();
    }

    /**
     * Makes an empty office ready: by what is handed in the first time on a database, by a copy of the rows it wrote from
     * then on. The name stands for what it does; the clock as it is now is part of it. Where people work in the office
     * already, and in an office that no tests share, it is simply done.
     */
    public void begin(String name, Runnable ready) {
        KeptBeginnings known = beginnings;
        if (known == null || !isUnused()) {
            ready.run();
            return;
        }
        String beginning = name + " at " + the(Clock.class).instant();
        Instant clock = known.putBack(beginning);
        if (clock == null) {
            ready.run();
            known.keep(beginning, tables(), the(Clock.class).instant());
        } else {
            OfficeTime.set(this, clock);
            StatusMemory.forget(this);
        }
    }

    private boolean isUnused() {
        return jdbc().sql("select not exists (select 1 from office_user) and not exists (select 1 from election)")
                .query(Boolean.class)
                .single();
    }

    /** Back to the state after the migrations. */
    public void empty() {
        OfficeTime.reset(this);
        List<String> tables = tables();
        if (kind == DatabaseKind.H2) {
            jdbc().sql("set referential_integrity false").update();
            tables.forEach(table -> jdbc().sql("truncate table " + table).update());
            jdbc().sql("set referential_integrity true").update();
        } else {
            jdbc().sql("truncate " + String.join(", ", tables)).update();
        }
        jdbc().sql("insert into ledger_head (chain, sequence, hash) values ('office', 0, repeat('0', 64))")
                .update();
    }
}
