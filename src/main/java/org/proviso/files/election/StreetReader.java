package org.proviso.files.election;

import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.proviso.core.StreetSegment;
import org.proviso.files.InputException;
import org.proviso.files.SetAside;
import org.proviso.files.csv.CsvColumns;
import org.proviso.files.csv.CsvRow;
import org.proviso.files.csv.CsvTable;
import org.proviso.files.csv.NumberedRows;

/** Reads {@code streets.csv}: stretches of house numbers and the precinct part they lie in. */
public final class StreetReader {

    private static final CsvColumns COLUMNS =
            CsvColumns.of("low", "high", "parity", "street", "city", "zip", "precinct", "split?");

    private StreetReader() {}

    /** Strict: a bad row refuses the file. */
    public static NumberedRows<StreetSegment> read(Path file, Consumer<String> warn) {
        return CsvTable.read(file, COLUMNS, warn, StreetReader::segment);
    }

    /** Bad rows are set aside where somebody takes them, and so is a stretch in a precinct that does not exist. */
    static NumberedRows<StreetSegment> read(
            Path file, Consumer<String> warn, @Nullable SetAside aside, Predicate<StreetSegment> exists) {
        return aside == null
                ? read(file, warn)
                : CsvTable.read(file, COLUMNS, warn, aside, row -> existing(row, segment(row), exists));
    }

    private static StreetSegment existing(CsvRow row, StreetSegment segment, Predicate<StreetSegment> exists) {
        if (!exists.test(segment)) {
            throw row.wrong("precinct", FolderChecks.notIn(FolderChecks.part(segment), "precincts.csv"));
        }
        return segment;
    }

    private static StreetSegment segment(CsvRow row) {
        int low = row.requiredWhole("low");
        int high = row.requiredWhole("high");
        if (low > high) {
            throw row.wrong("high", InputException.quoted(row.text("high")) + " is below the low number, " + low);
        }
        return new StreetSegment(
                low,
                high,
                row.requiredCode("parity", StreetSegment.Parity.class),
                row.required("street"),
                row.text("city"),
                row.text("zip"),
                row.requiredKey("precinct"),
                row.key("split"));
    }
}
