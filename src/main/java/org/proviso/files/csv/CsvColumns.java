package org.proviso.files.csv;

import java.util.ArrayList;
import java.util.List;

/**
 * The columns of one kind of CSV file: those it must have, those it may have, and the groups of columns that no two
 * rows may share.
 */
public record CsvColumns(List<String> required, List<String> optional, List<List<String>> keys) {

    /** Columns as the file formats are written down: a name that ends in {@code ?} may be missing from the header. */
    public static CsvColumns of(String... spelled) {
        List<String> required = new ArrayList<>();
        List<String> optional = new ArrayList<>();
        for (String name : spelled) {
            if (name.endsWith("?")) {
                optional.add(name.substring(0, name.length() - 1));
            } else {
                required.add(name);
            }
        }
        return new CsvColumns(List.copyOf(required), List.copyOf(optional), List.of());
    }

    /** The same columns, where no two rows may agree in all of these; rows in which all of them are empty are left out. */
    public CsvColumns unique(String... columns) {
        List<List<String>> more = new ArrayList<>(keys);
        more.add(List.of(columns));
        return new CsvColumns(required, optional, List.copyOf(more));
    }

    boolean knows(String name) {
        return required.contains(name) || optional.contains(name);
    }
}
