package org.proviso.files.mapping;

import java.util.List;

/**
 * Where one of our columns comes from: the office's columns, joined with a space where they are several, in a form; or
 * without columns one value that every row gets.
 */
public record FieldSource(String field, List<String> from, CellForm form, String value) {

    public FieldSource {
        from = List.copyOf(from);
    }

    public static FieldSource of(String field, String from, CellForm form) {
        return new FieldSource(field, List.of(from), form, "");
    }
}
