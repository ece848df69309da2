package org.proviso.files.election;

import java.nio.file.Path;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.proviso.core.MailBallot;
import org.proviso.core.VoterId;
import org.proviso.files.SetAside;
import org.proviso.files.csv.CsvColumns;
import org.proviso.files.csv.CsvTable;
import org.proviso.files.csv.NumberedRows;

/** Reads {@code mail-ballots.csv}; two ballots of one voter are told apart by their serials. */
public final class MailBallotReader {

    private static final CsvColumns COLUMNS = CsvColumns.of(
                    "voter_id", "ballot_serial?", "issued_on", "state", "state_on")
            .unique("voter_id", "ballot_serial");

    private MailBallotReader() {}

    /** Strict: a bad row refuses the file. */
    public static NumberedRows<MailBallot> read(Path file, Consumer<String> warn) {
        return read(file, warn, null);
    }

    /** Bad rows are set aside where somebody takes them. */
    public static NumberedRows<MailBallot> read(Path file, Consumer<String> warn, @Nullable SetAside aside) {
        return CsvTable.read(
                file,
                COLUMNS,
                warn,
                aside,
                row -> new MailBallot(
                        new VoterId(row.requiredKey("voter_id")),
                        row.key("ballot_serial"),
                        row.date("issued_on"),
                        row.requiredCode("state", MailBallot.State.class),
                        row.date("state_on")));
    }
}
