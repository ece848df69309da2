package org.proviso.election;

import static org.proviso.core.act.ActResults.accepted;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.database.DatabaseKind;
import org.proviso.database.TestOffice;
import org.proviso.ledger.Actor;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;

/**
 * Times loading both samples, and recording acts with one and with twenty threads, on both databases. A command, never
 * a test: run its main from the project's folder. The embedded PostgreSQL runs without waiting for the disk, so its
 * figures flatter it; H2 runs as in the office, with WRITE_DELAY=0.
 */
public final class ElectionLoadBench {

    private static final int ROUNDS = 3;
    private static final int ACTS = 2_000;

    private ElectionLoadBench() {}

    public static void main(String[] arguments) throws InterruptedException {
        for (DatabaseKind kind : DatabaseKind.values()) {
            TestOffice office = TestOffice.on(kind);
            for (int round = 1; round <= ROUNDS; round++) {
                load(office, round);
            }
            for (int threads : new int[] {1, 20}) {
                record(office, threads);
            }
        }
        System.exit(0);
    }

    private static void load(TestOffice office, int round) {
        office.empty();
        Staff.hire(office, "hugh", Role.SUPERVISOR);
        Staff.signIn("hugh");
        for (String sample : new String[] {"tamarack-primary", "tamarack-general"}) {
            long start = System.nanoTime();
            accepted(office.the(ElectionLoadService.class).load(Path.of("sample-cases", sample)));
            System.out.printf("%s round %d: %s loaded in %d ms%n", office.kind(), round, sample, since(start));
        }
    }

    private static void record(TestOffice office, int threads) throws InterruptedException {
        LedgerService ledger = office.the(LedgerService.class);
        LedgerChain chain = LedgerChain.of(new ElectionId("tamarack-general"));
        ExecutorService people = Executors.newFixedThreadPool(threads);
        long start = System.nanoTime();
        for (int act = 0; act < ACTS; act++) {
            String subject = "E-" + act;
            people.submit(() -> office.inTransaction(
                    () -> ledger.record(chain, Actor.SYSTEM, "envelope_taken", subject, Map.of("n", 1))));
        }
        people.shutdown();
        people.awaitTermination(10, TimeUnit.MINUTES);
        long millis = since(start);
        System.out.printf(
                "%s: %d entries by %d threads in %d ms, %d a second, chain whole: %s%n",
                office.kind(),
                ACTS,
                threads,
                millis,
                ACTS * 1_000L / millis,
                ledger.verify(chain).isWhole());
    }

    private static long since(long start) {
        return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
    }
}
