package org.proviso.files.election;

import java.nio.file.Path;
import java.util.function.Consumer;
import org.proviso.core.StreetSegment;
import org.proviso.files.InputException;
import org.proviso.files.csv.CsvColumns;
import org.proviso.files.csv.CsvRow;
import org.proviso.files.csv.CsvTable;
import org.proviso.files.csv.NumberedRows;

/** Reads {@code streets.csv}: stretches of house numbers and the precinct part they lie in. */
public final class StreetReader {

    private static final CsvColumns COLUMNS =
            CsvColumns.of("low", "high", "parity", "street", "city", "zip", "precinct", "split?");

    private StreetReader() {}

    public static NumberedRows<StreetSegment> read(Path file, Consumer<String> warn) {
        return CsvTable.read(file, COLUMNS, warn, StreetReader::segment);
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
