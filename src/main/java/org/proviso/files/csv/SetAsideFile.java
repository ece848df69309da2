package org.proviso.files.csv;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.proviso.files.SetAside;
import org.proviso.files.SetAsideRow;

/** The rows of outside lists that were set aside, as a CSV file that is written while the lists are read. */
public final class SetAsideFile {

    /** The file's columns. */
    public static final List<String> HEADER = List.of("list", "line", "column", "reason", "row");

    private SetAsideFile() {}

    /**
     * Writes the rows that the reading sets aside, and gives what it reads. Where that refuses its files after all, an
     * older file of that name stays as it was.
     */
    public static <T> T during(Path target, Function<SetAside, T> reading) {
        List<T> read = new ArrayList<>();
        CsvOutput.write(target, HEADER, out -> read.add(reading.apply(row -> out.row(cells(row)))));
        return read.get(0);
    }

    /** Reads such a file again, row by row. */
    public static void each(Path file, SetAside each) {
        CsvTable.each(
                file,
                CsvColumns.of(HEADER.toArray(String[]::new)),
                warning -> {},
                table -> () -> row(table.row()),
                (line, row) -> each.take(row));
    }

    private static SetAsideRow row(CsvRow row) {
        return new SetAsideRow(
                row.text("list"), row.requiredWhole("line"), row.text("column"), row.text("reason"), row.text("row"));
    }

    /** The cells of a row in a file that people open in a spreadsheet. */
    public static List<String> forSpreadsheet(SetAsideRow row) {
        return cells(row).stream().map(CsvOutput::text).toList();
    }

    private static List<String> cells(SetAsideRow row) {
        return List.of(row.list(), String.valueOf(row.line()), row.column(), row.reason(), row.asItCame());
    }
}
