package org.proviso.roll;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.proviso.core.CheckIn;
import org.proviso.core.ElectionId;
import org.proviso.core.MailBallot;
import org.proviso.core.VotedElsewhere;
import org.proviso.core.Voter;
import org.proviso.election.LoadWatch;
import org.proviso.files.InputException;
import org.proviso.files.election.CheckInReader;
import org.proviso.files.election.MailBallotReader;
import org.proviso.files.election.VotedElsewhereReader;
import org.proviso.files.roll.RollReader;
import org.proviso.files.roll.VriRollReader;
import org.springframework.stereotype.Component;

/** Reads one list through the same strict readers as an election folder, and writes it as a snapshot. */
@Component
class ListLoader {

    private final SnapshotStore snapshots;
    private final VoterStore voters;
    private final VotingRecordStore records;
    private final LoadWatch watch;

    ListLoader(SnapshotStore snapshots, VoterStore voters, VotingRecordStore records, LoadWatch watch) {
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

    Snapshot load(ElectionId id, SnapshotKind kind, Path file, String hash, Consumer<String> warn) {
        return switch (kind) {
            case ROLL -> roll(id, file, hash, warn);
            case MAIL_BALLOTS -> {
                List<MailBallot> rows = MailBallotReader.read(file, warn).values();
                int number = snapshots.add(id, kind, hash, rows.size());
                records.insertMailBallots(id, number, rows);
                yield new Snapshot(number, kind, rows.size());
            }
            case CHECK_INS -> {
                List<CheckIn> rows = CheckInReader.read(file, warn).values();
                int number = snapshots.add(id, kind, hash, rows.size());
                records.insertCheckIns(id, number, rows);
                yield new Snapshot(number, kind, rows.size());
            }
            case VOTED_ELSEWHERE -> {
                List<VotedElsewhere> rows =
                        VotedElsewhereReader.read(file, warn).values();
                int number = snapshots.add(id, kind, hash, rows.size());
                records.insertVotedElsewhere(id, number, rows);
                yield new Snapshot(number, kind, rows.size());
            }
        };
    }

    /** A roll may have a million rows, so it is never held whole. */
    private Snapshot roll(ElectionId id, Path file, String hash, Consumer<String> warn) {
        int number = snapshots.add(id, SnapshotKind.ROLL, hash, 0);
        int rows = watch.during(() -> voters.load(
                id,
                number,
                each -> read(file, warn, each),
                watch.begin("Reading, checking and saving a newer roll", 0)));
        watch.begin("Comparing a newer roll with the one in use", 0);
        snapshots.count(id, number, rows);
        return new Snapshot(number, SnapshotKind.ROLL, rows);
    }

    private static void read(Path file, Consumer<String> warn, Consumer<Voter> each) {
        if (file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".json")) {
            VriRollReader.read(file, warn, each);
        } else {
            RollReader.read(file, warn, each);
        }
    }
}
