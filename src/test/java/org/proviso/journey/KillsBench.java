package org.proviso.journey;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Random;
import java.util.stream.Stream;
import org.proviso.core.ElectionId;
import org.proviso.database.DatabaseKind;
import org.proviso.database.TestOffice;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.replay.CaseReplay;

/**
 * Looks at the office's database as a kill at a random moment leaves it, while eight people act. A command, never a test:
 * {@code KillsBench h2 1000} or {@code KillsBench postgresql 200}, from the project's folder.
 *
 * <p>On H2 the program is stopped by a signal, its file is copied, and it goes on: the copy is the file that a kill in that
 * moment leaves, without the seconds that a new start takes. Every fiftieth time it is killed indeed and the whole election
 * is replayed. On PostgreSQL every stop is a kill.
 */
public final class KillsBench {

    private static final int PEOPLE = 8;
    private static final int LOT = 50;
    private static final int LONGEST_MILLIS = 150;

    private final Random random = new Random(1);
    private int looked;
    private int torn;
    private int lost;
    private long acts;

    private KillsBench() {}

    public static void main(String[] arguments) throws Exception {
        KillsBench bench = new KillsBench();
        int kills = Integer.parseInt(arguments[1]);
        long start = System.nanoTime();
        if (arguments[0].equals("h2")) {
            bench.h2(kills);
        } else {
            bench.postgresql(kills);
        }
        System.out.printf(
                "%s: %d kills of %d people, %d acts acknowledged: %d torn, %d with an act lost (%d s)%n",
                arguments[0],
                bench.looked,
                PEOPLE,
                bench.acts,
                bench.torn,
                bench.lost,
                (System.nanoTime() - start) / 1_000_000_000);
        System.exit(bench.torn + bench.lost == 0 ? 0 : 1);
    }

    private void h2(int kills) throws Exception {
        while (looked < kills) {
            Path folder = Files.createTempDirectory(Path.of("target"), "kills-");
            KilledProgram program = KilledProgram.start(h2(folder.resolve("proviso")), 0, PEOPLE);
            KilledState state = new KilledState();
            for (int i = 1; i < LOT && looked < kills; i++) {
                Thread.sleep(random.nextInt(LONGEST_MILLIS));
                program.stopForAMoment();
                state.note(program.acts());
                Path copy = folder.resolve("copy");
                Files.copy(folder.resolve("proviso.mv.db"), Path.of(copy + ".mv.db"));
                look(state, h2(copy), "sa");
                program.goOn();
                Files.delete(Path.of(copy + ".mv.db"));
            }
            program.kill();
            state.note(program.acts());
            look(state, h2(folder.resolve("proviso")), "sa");
            replay(TestOffice.over(h2(folder.resolve("proviso"))));
            acts += state.acts();
            delete(folder);
            System.out.printf("%d looked at, %d torn, %d lost, %d acts%n", looked, torn, lost, acts);
        }
    }

    private void postgresql(int kills) throws Exception {
        String url = DatabaseKind.POSTGRESQL.newUrl();
        KilledState state = new KilledState();
        for (int round = 0; round < kills; round++) {
            KilledProgram program = KilledProgram.start(url, round, PEOPLE);
            Thread.sleep(random.nextInt(10 * LONGEST_MILLIS));
            program.kill();
            state.note(program.acts());
            look(state, url, "postgres");
        }
        acts = state.acts();
        replay(TestOffice.over(DatabaseKind.POSTGRESQL, url));
    }

    private void look(KilledState state, String url, String user) throws Exception {
        KilledState.Found found = state.compare(url, user);
        looked++;
        torn += found.torn().isEmpty() ? 0 : 1;
        lost += found.lost().isEmpty() ? 0 : 1;
        Stream.concat(found.torn().stream(), found.lost().stream()).limit(3).forEach(System.out::println);
    }

    /** The whole chain, and every case by it. */
    private void replay(TestOffice office) {
        ElectionId election = new ElectionId(Primary.ID);
        office.the(LedgerService.class).verify(LedgerChain.of(election)).fault().ifPresent(System.out::println);
        office.the(CaseReplay.class).replay(election).first().forEach(difference -> {
            torn++;
            System.out.println(difference);
        });
        office.close();
    }

    private static String h2(Path file) {
        return "jdbc:h2:file:" + file.toAbsolutePath() + ";WRITE_DELAY=0;LOCK_TIMEOUT=10000";
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(one);
            }
        }
    }
}
