package org.proviso.roll;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.function.Supplier;
import org.proviso.core.ElectionId;
import org.proviso.core.VoterId;
import org.proviso.core.matching.Matcher;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.index.RollIndexBuilder;
import org.proviso.core.matching.index.RollUpdate;
import org.proviso.core.matching.index.UpdatedRoll;
import org.proviso.core.matching.index.VoterLookup;
import org.proviso.database.DatabaseKind;
import org.proviso.database.TestOffice;
import org.proviso.files.ContentHash;
import org.proviso.files.roll.RollReader;

/**
 * How long a roll takes from its file into the tables of an H2 file database and of a PostgreSQL server, and from there
 * into the index: {@code RollLoadBench roll.csv}. A command, never a test. The file is checked row by row, written for the
 * database, and loaded in one transaction with all keys and indexes in place.
 */
public final class RollLoadBench {

    private static final String ELECTION = "bench";
    private static final int MOST = 25;

    private static final String ELECTION_ROW = """
            insert into election (election_id, name, held_on, kind, jurisdiction, zone, rule_pack, deciding_members,
                deciding_quorum, office_name, office_address, office_phone, office_email, polls_close, languages,
                content_hash, loaded_at, version)
            values ('bench', 'Bench', date '2026-11-03', 'general', 'Bench', 'America/Detroit', 'us', 3, 2, '', '', '', '',
                time '20:00:00', 'en', 'bench', timestamp with time zone '2026-11-04 00:00:00+00', 0)""";

    private RollLoadBench() {}

    public static void main(String[] arguments) throws IOException {
        Path roll = Path.of(arguments[0]);
        Path folder = Files.createTempDirectory("roll-load");
        String url = "jdbc:h2:file:" + folder.resolve(UUID.randomUUID().toString()) + ";WRITE_DELAY=0";
        measure("H2 file", TestOffice.over(url), roll);
        measure("PostgreSQL", TestOffice.on(DatabaseKind.POSTGRESQL), roll);
        System.exit(0);
    }

    private static void measure(String name, TestOffice office, Path roll) throws IOException {
        office.jdbc().sql(ELECTION_ROW).update();
        SnapshotStore snapshots = office.the(SnapshotStore.class);
        VoterStore voters = office.the(VoterStore.class);
        long start = System.nanoTime();
        int rows = office.inTransaction(() -> {
            int number = snapshots.add(new ElectionId(ELECTION), SnapshotKind.ROLL, ContentHash.ofFile(roll), 0);
            int count =
                    voters.load(new ElectionId(ELECTION), number, each -> RollReader.read(roll, warning -> {}, each));
            snapshots.count(new ElectionId(ELECTION), number, count);
            snapshots.use(new ElectionId(ELECTION), SnapshotKind.ROLL, number);
            return count;
        });
        System.out.printf(Locale.ROOT, "%s: %,d rows in %.1f s, %s%n", name, rows, seconds(start), load());
        start = System.nanoTime();
        RollIndexBuilder builder = RollIndex.builder();
        office.inTransaction(() -> {
            voters.entries(new ElectionId(ELECTION), builder::add);
            return rows;
        });
        RollIndex index = builder.build();
        System.out.printf(
                Locale.ROOT,
                "%s: index of %,d voters from the table in %.1f s, %s%n",
                name,
                index.size(),
                seconds(start),
                load());
        VoterLookup lookup = new VoterLookup(UpdatedRoll.of(index));
        measure(name + ": practice at the start", () -> {
            lookup.practice();
            return List.of();
        });
        for (int i = 0; i < 3; i++) {
            measure(name + ": look-up by a part of the name", () -> lookup.named("wil", "ma", MOST));
            measure(name + ": look-up by date of birth", () -> lookup.born(LocalDate.of(1974, 3, 9), MOST));
            measure(name + ": look-up by address", () -> lookup.at("17 Main", MOST));
            measure(name + ": look-up by the number's beginning", () -> lookup.numbered("V2000017", MOST));
        }
        measureUpdate(name, office, index);
    }

    /** A newer roll in which a thousand voters moved, over the index of the older. */
    private static void measureUpdate(String name, TestOffice office, RollIndex index) {
        String columns = "voter_id, " + String.join(", ", VoterStore.CONTENT);
        office.inTransaction(() -> {
            int number = office.the(SnapshotStore.class)
                    .add(new ElectionId(ELECTION), SnapshotKind.ROLL, "newer", index.size());
            String newer = "insert into voter (election_id, snapshot_no, row_no, " + columns + ") select election_id, "
                    + number + ", row_no, "
                    + columns.replace("house_number", "case when mod(row_no, ?) = 0 then '77001' else house_number end")
                    + " from voter where election_id = ? and snapshot_no = 1";
            int rows = office.jdbc()
                    .sql(newer)
                    .params(Math.max(1, index.size() / 1_000), ELECTION)
                    .update();
            office.the(BulkLoadStore.class).count("voter");
            return rows;
        });
        for (int i = 0; i < 3; i++) {
            long start = System.nanoTime();
            RollUpdate update = new RollUpdate();
            RollService roll = office.the(RollService.class);
            roll.changes(new ElectionId(ELECTION), 1, 2, update::add);
            double read = seconds(start);
            start = System.nanoTime();
            UpdatedRoll updated = update.over(index);
            new Matcher(updated);
            System.out.printf(
                    Locale.ROOT,
                    "%s: %,d voters that differ found in %.1f s, over the index in %.2f s, %s%n",
                    name,
                    update.size(),
                    read,
                    seconds(start),
                    load());
            VoterLookup lookup = new VoterLookup(updated);
            measure(name + ": look-up by a part of the name, updated", () -> lookup.named("wil", "ma", MOST));
        }
    }

    private static void measure(String name, Supplier<List<VoterId>> lookup) {
        long start = System.nanoTime();
        int found = lookup.get().size();
        System.out.printf(Locale.ROOT, "%s: %d in %.1f ms, %s%n", name, found, 1e3 * seconds(start), load());
    }

    private static double seconds(long start) {
        return (System.nanoTime() - start) / 1e9;
    }

    private static String load() {
        try {
            return "load " + Files.readString(Path.of("/proc/loadavg")).split(" ")[0];
        } catch (IOException e) {
            return "load unknown";
        }
    }
}
