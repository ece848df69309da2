package org.proviso.cli.sample;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One line of a file under its columns; what is not set is empty, and a column the file does not have is refused. */
final class Row {

    private final Map<String, String> cells = new LinkedHashMap<>();

    Row(List<String> columns) {
        columns.forEach(column -> cells.put(column, ""));
    }

    Row set(String column, Object value) {
        if (cells.replace(column, value.toString()) == null) {
            throw new IllegalArgumentException("no column " + column);
        }
        return this;
    }

    String get(String column) {
        String value = cells.get(column);
        if (value == null) {
            throw new IllegalArgumentException("no column " + column);
        }
        return value;
    }

    boolean blank(String column) {
        return get(column).isEmpty();
    }

    Row copy() {
        Row copy = new Row(List.copyOf(cells.keySet()));
        cells.forEach(copy::set);
        return copy;
    }

    List<String> values() {
        return List.copyOf(cells.values());
    }
}
