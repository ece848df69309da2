package org.proviso.files.election;

import java.nio.file.Path;
import java.util.function.Consumer;
import org.proviso.core.Transmittal;
import org.proviso.files.csv.CsvColumns;
import org.proviso.files.csv.CsvTable;
import org.proviso.files.csv.NumberedRows;

/** Reads {@code transmittals.csv}: the voting locations' returns. */
public final class TransmittalReader {

    private static final CsvColumns COLUMNS = CsvColumns.of(
            "voting_location",
            "day?",
            "bag?",
            "seal_out",
            "seal_in",
            "supplied?",
            "issued",
            "spoiled",
            "unused?",
            "returned",
            "scanned_in_error?",
            "loose_ballots?");

    private TransmittalReader() {}

    public static NumberedRows<Transmittal> read(Path file, Consumer<String> warn) {
        return CsvTable.read(
                file,
                COLUMNS,
                warn,
                row -> new Transmittal(
                        row.requiredKey("voting_location"),
                        row.date("day"),
                        row.key("bag"),
                        row.key("seal_out"),
                        row.key("seal_in"),
                        row.whole("supplied"),
                        row.requiredWhole("issued"),
                        row.requiredWhole("spoiled"),
                        row.whole("unused"),
                        row.requiredWhole("returned"),
                        row.whole("scanned_in_error"),
                        row.whole("loose_ballots")));
    }
}
