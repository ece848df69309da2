package org.proviso.files.election;

import java.nio.file.Path;
import java.util.function.Consumer;
import org.proviso.core.Contest;
import org.proviso.files.csv.CsvColumns;
import org.proviso.files.csv.CsvTable;
import org.proviso.files.csv.NumberedRows;

/** Reads {@code contests.csv}: every office and measure of the election. */
public final class ContestReader {

    private static final CsvColumns COLUMNS =
            CsvColumns.of("contest_id", "title", "district", "level").unique("contest_id");

    private ContestReader() {}

    public static NumberedRows<Contest> read(Path file, Consumer<String> warn) {
        return CsvTable.read(
                file,
                COLUMNS,
                warn,
                row -> new Contest(
                        row.requiredKey("contest_id"),
                        row.required("title"),
                        row.key("district"),
                        row.requiredCode("level", Contest.Level.class)));
    }
}
