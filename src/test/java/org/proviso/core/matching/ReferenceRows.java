package org.proviso.core.matching;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.proviso.Shared;

/** Rows of a small reference table, by column name; quotes are allowed round a cell, line breaks are not. */
final class ReferenceRows {

    private ReferenceRows() {}

    static List<Map<String, String>> of(String name) throws IOException {
        List<String> lines = Files.readAllLines(Shared.file(name));
        List<String> header = cells(lines.get(0));
        List<Map<String, String>> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            Map<String, String> row = new LinkedHashMap<>();
            List<String> cells = cells(line);
            for (int i = 0; i < header.size(); i++) {
                row.put(header.get(i).strip(), i < cells.size() ? cells.get(i) : "");
            }
            rows.add(row);
        }
        return rows;
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char letter : line.toCharArray()) {
            if (letter == '"') {
                quoted = !quoted;
            } else if (letter == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(letter);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
