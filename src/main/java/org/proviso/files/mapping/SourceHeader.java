package org.proviso.files.mapping;

import java.util.ArrayList;
import java.util.List;
import org.proviso.files.InputException;

/** The columns of a file as it came today, and where those of the mapping stand in it. */
record SourceHeader(List<String> columns, List<String> newColumns) {

    /** Names in the order of the file: one that appears again gets its number, one without a name its place. */
    static List<String> unique(List<String> cells) {
        List<String> names = new ArrayList<>();
        for (String cell : cells) {
            String name = cell.isBlank() ? "column " + (names.size() + 1) : cell.strip();
            String unique = name;
            for (int count = 2; names.contains(unique); count++) {
                unique = name + " (" + count + ")";
            }
            names.add(unique);
        }
        return names;
    }

    /** The header of a file with one; a column that the mapping reads and the file has not is refused by name. */
    static SourceHeader of(String file, SourceRows.Row row, Mapping mapping) {
        List<String> columns = unique(row.cells());
        List<String> missing = mapping.fields().stream()
                .flatMap(source -> source.from().stream())
                .distinct()
                .filter(name -> !columns.contains(name))
                .toList();
        if (!missing.isEmpty()) {
            String reason = "has no column " + String.join(", ", missing) + ", which mapping "
                    + InputException.quoted(mapping.name()) + " reads; its columns are " + String.join(", ", columns);
            throw new InputException(file, row.line(), "", reason);
        }
        List<String> known = mapping.source().columns();
        return new SourceHeader(
                columns, columns.stream().filter(name -> !known.contains(name)).toList());
    }

    int place(String column) {
        return columns.indexOf(column);
    }
}
