package org.proviso.files.csv;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.proviso.files.InputException;

/** The header of one CSV file: which column stands where. */
final class CsvHeader {

    private final String file;
    private final CsvColumns columns;
    private final List<String> names = new ArrayList<>();
    private final Map<String, Integer> places = new HashMap<>();

    CsvHeader(String file, CsvColumns columns, CsvCells row, Consumer<String> warn) {
        this.file = file;
        this.columns = columns;
        columns.optional().forEach(name -> places.put(name, -1));
        for (int i = 0; i < row.count(); i++) {
            take(row.text(i), row.line());
        }
        requireAll(row.line());
        warnOfUnknown(warn);
    }

    int size() {
        return names.size();
    }

    String name(int index) {
        return names.get(index);
    }

    /** The column's place, or -1 for an optional column this file does not have. */
    int index(String name) {
        Integer index = places.get(name);
        if (index == null) {
            throw new IllegalArgumentException("no column " + name + " among the columns of " + file);
        }
        return index;
    }

    private void take(String name, int line) {
        int place = names.size() + 1;
        if (name.isBlank()) {
            throw new InputException(file, line, "", "column " + place + " of the header has no name");
        }
        int first = names.indexOf(name);
        if (first >= 0) {
            throw new InputException(
                    file, line, name, "appears twice in the header (columns " + (first + 1) + " and " + place + ")");
        }
        names.add(name);
        places.put(name, place - 1);
    }

    private void requireAll(int line) {
        for (String name : columns.required()) {
            if (!places.containsKey(name)) {
                throw new InputException(file, line, name, "is missing from the header");
            }
        }
    }

    private void warnOfUnknown(Consumer<String> warn) {
        List<String> unknown =
                names.stream().filter(name -> !columns.knows(name)).toList();
        if (!unknown.isEmpty()) {
            warn.accept(file + ": unknown columns were ignored: " + String.join(", ", unknown));
        }
    }
}
