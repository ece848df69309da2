package org.proviso.files.election;

import java.nio.file.Path;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.proviso.core.VotedElsewhere;
import org.proviso.files.SetAside;
import org.proviso.files.csv.CsvColumns;
import org.proviso.files.csv.CsvTable;
import org.proviso.files.csv.NumberedRows;

/** Reads {@code voted-elsewhere.csv}: the state's list of people who voted in another county. */
public final class VotedElsewhereReader {

    private static final CsvColumns COLUMNS = CsvColumns.of(
            "last_name",
            "first_name",
            "middle_name",
            "suffix",
            "date_of_birth",
            "id_last4",
            "drivers_license",
            "county",
            "how",
            "on");

    private VotedElsewhereReader() {}

    /** Strict: a bad row refuses the file. */
    public static NumberedRows<VotedElsewhere> read(Path file, Consumer<String> warn) {
        return read(file, warn, null);
    }

    /** Bad rows are set aside where somebody takes them. */
    public static NumberedRows<VotedElsewhere> read(Path file, Consumer<String> warn, @Nullable SetAside aside) {
        return CsvTable.read(
                file,
                COLUMNS,
                warn,
                aside,
                row -> new VotedElsewhere(
                        row.name(),
                        row.date("date_of_birth"),
                        row.key("id_last4"),
                        row.key("drivers_license"),
                        row.required("county"),
                        row.text("how"),
                        row.date("on")));
    }
}
