package org.proviso.files.mapping;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.proviso.files.csv.CsvColumns;
import org.proviso.files.csv.CsvRow;
import org.proviso.files.csv.CsvTable;

/** Reads the layout file of a fixed-width file: {@code name,from,to}, a row for each column, characters counted from 1. */
public final class LayoutReader {

    private static final CsvColumns COLUMNS =
            CsvColumns.of("name", "from", "to").unique("name");

    private LayoutReader() {}

    public static List<FixedColumn> read(Path file, Consumer<String> warn) {
        return CsvTable.read(file, COLUMNS, warn, LayoutReader::column).values();
    }

    private static FixedColumn column(CsvRow row) {
        int from = row.requiredWhole("from");
        int to = row.requiredWhole("to");
        if (from < 1 || to < from) {
            throw row.wrong("to", "a column lies from one character, counted from 1, to the same or a later one");
        }
        return new FixedColumn(row.required("name").strip(), from, to);
    }
}
