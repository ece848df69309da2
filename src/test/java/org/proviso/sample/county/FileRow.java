package org.proviso.sample.county;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One line of a file under its columns; what is not set is empty, and a column the file does not have is refused. */
public final class FileRow {

    private final Map<String, String> cells = new LinkedHashMap<>();

    public FileRow(List<String> columns) {
        columns.forEach(column -> cells.put(column, ""));
    }

    public FileRow set(String column, Object value) {
        if (cells.replace(column, value.toString()) == null) {
            throw new IllegalArgumentException("no column " + column);
        }
        return this;
    }

    public String get(String column) {
        String value = cells.get(column);
        if (value == null) {
            throw new IllegalArgumentException("no column " + column);
        }
        return value;
    }

    public boolean blank(String column) {
        return get(column).isEmpty();
    }

    FileRow copy() {
        FileRow copy = new FileRow(List.copyOf(cells.keySet()));
        cells.forEach(copy::set);
        return copy;
    }

    public List<String> values() {
        return List.copyOf(cells.values());
    }
}
