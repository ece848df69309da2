package org.proviso.files.table;

import java.io.BufferedWriter;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.proviso.files.csv.CsvOutput;
import org.proviso.files.csv.SpreadsheetText;

/**
 * A list as CSV: first what the file says about itself, a line each with the name in the first cell, then the headings,
 * then the rows. All lines have as many cells.
 */
final class CsvList {

    private CsvList() {}

    static void write(TableHead head, OutputStream out, Consumer<TableRows> rows) {
        List<TableColumn> columns = head.columns();
        int width = Math.max(2, columns.size());
        Writer text = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
        CsvOutput.write(text, width, file -> {
            head.about().forEach(line -> file.row(wide(Stream.of(line.name(), line.words()), width)));
            file.row(wide(columns.stream().map(TableColumn::heading), width));
            rows.accept(cells -> file.row(row(columns, cells, width)));
        });
    }

    private static List<String> row(List<TableColumn> columns, List<String> cells, int width) {
        List<String> row = new ArrayList<>(width);
        for (int at = 0; at < columns.size(); at++) {
            String cell = cells.get(at);
            row.add(columns.get(at).isNumber(cell) ? TableColumn.digits(cell) : SpreadsheetText.of(cell));
        }
        return filled(row, width);
    }

    private static List<String> wide(Stream<String> cells, int width) {
        return filled(new ArrayList<>(cells.map(SpreadsheetText::of).toList()), width);
    }

    private static List<String> filled(List<String> row, int width) {
        while (row.size() < width) {
            row.add("");
        }
        return row;
    }
}
