package org.proviso.journey;

import java.util.concurrent.TimeUnit;
import org.proviso.canvass.replay.ElectionReplayService;
import org.proviso.core.ElectionId;
import org.proviso.database.DatabaseKind;
import org.proviso.database.TestOffice;

/**
 * How many acts of reviewers the office takes in a second, with one and with twenty people at once, on both databases. A
 * command, never a test: run its main from the project's folder. An act is what {@link BusyReviewer} does: most assess
 * the case anew. The embedded PostgreSQL runs without waiting for the disk, so its figures flatter it.
 */
public final class ActsBench {

    private static final int SECONDS = 10;
    private static final int ROUNDS = 3;

    private ActsBench() {}

    public static void main(String[] arguments) throws Exception {
        for (DatabaseKind kind : DatabaseKind.values()) {
            TestOffice office = TestOffice.on(kind);
            for (int round = 1; round <= ROUNDS; round++) {
                for (int people : new int[] {1, 20}) {
                    measure(office, people, round);
                }
            }
        }
        System.exit(0);
    }

    private static void measure(TestOffice office, int people, int round) throws Exception {
        office.empty();
        Primary.loaded(office);
        BusyReviewer.hire(office, people);
        Crowd crowd = new Crowd(done -> {});
        long start = System.nanoTime();
        long end = start + TimeUnit.SECONDS.toNanos(SECONDS);
        crowd.work(office, people, round, () -> System.nanoTime() < end);
        double seconds = (System.nanoTime() - start) / 1e9;
        System.out.printf(
                "%s round %d, %d at once: %.0f accepted a second (%s), replay whole: %s%n",
                office.kind(),
                round,
                people,
                crowd.accepted.size() / seconds,
                crowd,
                office.the(ElectionReplayService.class)
                        .replay(new ElectionId(Primary.ID))
                        .isWhole());
    }
}
