package org.proviso.roll;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.proviso.core.CheckIn;
import org.proviso.core.ElectionId;
import org.proviso.core.MailBallot;
import org.proviso.core.VotedElsewhere;
import org.proviso.core.Voter;
import org.proviso.election.LoadWatch;
import org.proviso.files.InputException;
import org.proviso.files.SetAside;
import org.proviso.files.csv.CsvTable;
import org.proviso.files.election.CheckInReader;
import org.proviso.files.election.MailBallotReader;
import org.proviso.files.election.VotedElsewhereReader;
import org.proviso.files.roll.RollReader;
import org.proviso.files.roll.VriRollReader;
import org.proviso.roll.aside.SetAsideList;
import org.springframework.stereotype.Component;

/** Reads one list through the same strict readers as an election folder, and writes it as a snapshot. */
@Component
class ListLoader {

    private final SnapshotStore snapshots;
    private final VoterStore voters;
    private final VotingRecordStore records;
    private final SetAsideStore asides;
    private final LoadWatch watch;

    ListLoader(
            SnapshotStore snapshots,
            VoterStore voters,
            VotingRecordStore records,
            SetAsideStore asides,
            LoadWatch watch) {
        this.asides = asides;
        this.snapshots = snapshots;
        this.voters = voters;
        this.records = records;
        this.watch = watch;
    }

    /** The content of a file that is not there is the content of an absent list, so it is refused before. */
    static void demandFile(Path file) {
        if (!Files.isRegularFile(file)) {
            String name = String.valueOf(file.getFileName());
            throw new InputException(
                    name, 0, "", "is missing from " + file.toAbsolutePath().getParent());
        }
    }

    /** Strict: a bad row refuses the file. */
    Snapshot load(ElectionId id, SnapshotKind kind, Path file, String hash, Consumer<String> warn) {
        return load(new NewerFile(id, kind, file, hash, warn), null);
    }

    /** Bad rows are set aside with the list; nobody has decided about them yet. */
    Snapshot loadSettingAside(ElectionId id, SnapshotKind kind, Path file, String hash, Consumer<String> warn) {
        try (SetAsideWriter aside = asides.writer(id, snapshots.next(id), hash)) {
            Snapshot snapshot = load(new NewerFile(id, kind, file, hash, warn), aside);
            SetAsideList list = aside.finish();
            if (!list.isEmpty()) {
                asides.add(id, snapshot.number(), list, isJson(file) ? "" : CsvTable.headerAsItCame(file));
            }
            return snapshot;
        }
    }

    /** Only reads: throws where a row is bad. */
    void check(SnapshotKind kind, Path file) {
        Consumer<String> unheard = warning -> {};
        switch (kind) {
            case ROLL -> RollReader.read(file, unheard, voter -> {});
            case MAIL_BALLOTS -> MailBallotReader.read(file, unheard);
            case CHECK_INS -> CheckInReader.read(file, unheard);
            case VOTED_ELSEWHERE -> VotedElsewhereReader.read(file, unheard);
        }
    }

    private record NewerFile(ElectionId id, SnapshotKind kind, Path file, String hash, Consumer<String> warn) {}

    private Snapshot load(NewerFile newer, @Nullable SetAside aside) {
        ElectionId id = newer.id();
        return switch (newer.kind()) {
            case ROLL -> roll(newer, aside);
            case MAIL_BALLOTS -> {
                List<MailBallot> rows =
                        MailBallotReader.read(newer.file(), newer.warn(), aside).values();
                int number = snapshots.add(id, newer.kind(), newer.hash(), rows.size());
                records.insertMailBallots(id, number, rows);
                yield new Snapshot(number, newer.kind(), rows.size());
            }
            case CHECK_INS -> {
                List<CheckIn> rows =
                        CheckInReader.read(newer.file(), newer.warn(), aside).values();
                int number = snapshots.add(id, newer.kind(), newer.hash(), rows.size());
                records.insertCheckIns(id, number, rows);
                yield new Snapshot(number, newer.kind(), rows.size());
            }
            case VOTED_ELSEWHERE -> {
                List<VotedElsewhere> rows = VotedElsewhereReader.read(newer.file(), newer.warn(), aside)
                        .values();
                int number = snapshots.add(id, newer.kind(), newer.hash(), rows.size());
                records.insertVotedElsewhere(id, number, rows);
                yield new Snapshot(number, newer.kind(), rows.size());
            }
        };
    }

    /** A roll may have a million rows, so it is never held whole. */
    private Snapshot roll(NewerFile newer, @Nullable SetAside aside) {
        ElectionId id = newer.id();
        int number = snapshots.add(id, SnapshotKind.ROLL, newer.hash(), 0);
        int rows = watch.during(() -> voters.load(
                id,
                number,
                each -> read(newer, aside, each),
                watch.begin("Reading, checking and saving a newer roll", 0)));
        watch.begin("Comparing a newer roll with the one in use", 0);
        snapshots.count(id, number, rows);
        return new Snapshot(number, SnapshotKind.ROLL, rows);
    }

    private static void read(NewerFile newer, @Nullable SetAside aside, Consumer<Voter> each) {
        if (isJson(newer.file())) {
            VriRollReader.read(newer.file(), newer.warn(), aside, each);
        } else {
            RollReader.read(newer.file(), newer.warn(), aside, each);
        }
    }

    private static boolean isJson(Path file) {
        return file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".json");
    }
}
