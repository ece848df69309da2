package org.proviso.review.queue;

import static org.proviso.core.act.ActResults.accepted;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.database.DatabaseKind;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionLoadService;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Times the next case and the list of a queue of 100,000 envelopes on both databases: those of a sample, over and over. A
 * command, never a test: run its main from the project's folder.
 */
public final class QueueBench {

    private static final String ELECTION = "tamarack-general";
    private static final int ENVELOPES = 100_000;
    private static final int CASES = 40;
    private static final int PAGE = 50;
    private static final int FEW = 5;

    private QueueBench() {}

    public static void main(String[] arguments) {
        for (DatabaseKind kind : DatabaseKind.values()) {
            TestOffice office = TestOffice.on(kind);
            office.empty();
            Staff.hire(office, "hugh", Role.SUPERVISOR);
            Staff.hire(office, "rita", Role.REVIEWER);
            Staff.signIn("hugh");
            accepted(office.the(ElectionLoadService.class).load(Path.of("sample-cases", ELECTION)));
            long cases = multiply(office.jdbc());
            Staff.signIn("rita");
            measure(kind + ", " + cases + " cases", office.the(QueueService.class));
        }
        System.exit(0);
    }

    private static long multiply(JdbcClient jdbc) {
        long first = count(jdbc);
        for (int copy = 1; count(jdbc) < ENVELOPES; copy++) {
            String end = " || '-" + copy + "'";
            for (String table : List.of("envelope", "affirmation", "envelope_case")) {
                List<String> columns = jdbc.sql("select lower(column_name) from information_schema.columns "
                                + "where lower(table_name) = ? order by ordinal_position")
                        .param(table)
                        .query(String.class)
                        .list();
                String copied = columns.stream()
                        .map(column -> Set.of("envelope_no", "receipt_no").contains(column) ? column + end : column)
                        .collect(Collectors.joining(", "));
                jdbc.sql("insert into " + table + " (" + String.join(", ", columns) + ") select " + copied + " from "
                                + table + " where envelope_no not like '%-%-%' order by envelope_no limit " + first)
                        .update();
            }
        }
        return count(jdbc);
    }

    private static long count(JdbcClient jdbc) {
        return jdbc.sql("select count(*) from envelope_case").query(Long.class).single();
    }

    private static void measure(String what, QueueService queue) {
        QueueFilter all = QueueFilter.all(new ElectionId(ELECTION));
        for (int round = 0; round < 2; round++) {
            time(
                    what + ": the next case",
                    CASES,
                    () -> queue.takeNext(new ElectionId(ELECTION), List.of()).orElseThrow());
            time(what + ": first page", CASES, () -> queue.page(all, 0, PAGE));
            time(what + ": page from 10,000 on", CASES, () -> queue.page(all, 10_000, PAGE));
            time(what + ": count", CASES, () -> queue.count(all));
            for (QueueSort sort : QueueSort.values()) {
                QueueFilter list = all.sortedBy(sort, false);
                apart(what + ": first page by " + sort.code(), from -> queue.page(list, from, PAGE));
            }
            Map.of(
                            QueueColumn.REASON, "no_id",
                            QueueColumn.LOCATION, "Fairgrounds Pavilion",
                            QueueColumn.PRECINCT, "308",
                            QueueColumn.LANGUAGE, "es",
                            QueueColumn.OUTLOOK, "reject",
                            QueueColumn.HOLDER, "rita",
                            QueueColumn.AGE, "1")
                    .forEach((column, value) -> {
                        QueueFilter list = all.with(column, value);
                        apart(what + ": only " + column.code(), from -> queue.page(list, from, PAGE));
                        apart(what + ": count of " + column.code(), from -> queue.count(list));
                    });
            apart(
                    what + ": choices of precinct",
                    from -> queue.choices(all.electionId(), QueueColumn.PRECINCT, "", from, PAGE));
            apart(
                    what + ": choices of reason",
                    from -> queue.choices(all.electionId(), QueueColumn.REASON, "", from, PAGE));
        }
    }

    /** Each time another page, so that the database has no answer kept. */
    private static void apart(String what, IntFunction<?> page) {
        int[] from = {0};
        time(what, FEW, () -> page.apply(from[0]++));
    }

    private static void time(String what, int times, Runnable work) {
        long most = 0;
        long start = System.nanoTime();
        for (int i = 0; i < times; i++) {
            long begun = System.nanoTime();
            work.run();
            most = Math.max(most, System.nanoTime() - begun);
        }
        double mean = (System.nanoTime() - start) / 1e6 / times;
        System.out.printf(Locale.ROOT, "%s: %.1f ms, at most %.1f%n", what, mean, most / 1e6);
    }
}
