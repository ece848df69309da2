package org.proviso.files.election;

import java.nio.file.Path;
import java.util.function.Consumer;
import org.proviso.core.PrecinctPart;
import org.proviso.files.csv.CsvColumns;
import org.proviso.files.csv.CsvTable;
import org.proviso.files.csv.NumberedRows;

/** Reads {@code precincts.csv}: the parts of precincts and the ballot style of each. */
public final class PrecinctReader {

    private static final CsvColumns COLUMNS = CsvColumns.of(
                    "precinct", "split?", "ballot_style", "party?", "voting_location?")
            .unique("precinct", "split", "party");

    private PrecinctReader() {}

    public static NumberedRows<PrecinctPart> read(Path file, Consumer<String> warn) {
        return CsvTable.read(
                file,
                COLUMNS,
                warn,
                row -> new PrecinctPart(
                        row.requiredKey("precinct"),
                        row.key("split"),
                        row.requiredKey("ballot_style"),
                        row.key("party"),
                        row.key("voting_location")));
    }
}
