package org.proviso.files.election;

import java.nio.file.Path;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.proviso.core.CheckIn;
import org.proviso.core.VoterId;
import org.proviso.files.SetAside;
import org.proviso.files.csv.CsvColumns;
import org.proviso.files.csv.CsvTable;
import org.proviso.files.csv.NumberedRows;

/** Reads {@code check-ins.csv}: what the poll books recorded. A check-in of no stated kind is a regular one. */
public final class CheckInReader {

    private static final CsvColumns COLUMNS =
            CsvColumns.of("voter_id", "voting_location", "at", "kind?", "ballot_issued?", "cancelled_at?");

    private CheckInReader() {}

    /** Strict: a bad row refuses the file. */
    public static NumberedRows<CheckIn> read(Path file, Consumer<String> warn) {
        return read(file, warn, null);
    }

    /** Bad rows are set aside where somebody takes them. */
    public static NumberedRows<CheckIn> read(Path file, Consumer<String> warn, @Nullable SetAside aside) {
        return CsvTable.read(
                file,
                COLUMNS,
                warn,
                aside,
                row -> new CheckIn(
                        new VoterId(row.requiredKey("voter_id")),
                        row.key("voting_location"),
                        row.requiredDateTime("at"),
                        row.code("kind", CheckIn.Kind.class, CheckIn.Kind.REGULAR),
                        row.yesNo("ballot_issued"),
                        row.dateTime("cancelled_at")));
    }
}
