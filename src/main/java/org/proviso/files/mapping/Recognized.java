package org.proviso.files.mapping;

import java.util.List;

/**
 * What was recognized of an office's file: how it is written, whether its encoding is sure, the first rows as they stand
 * in it (without the header), how many there are, and what each column holds.
 */
public record Recognized(
        SourceForm form, boolean encodingSure, List<List<String>> first, long rows, List<ColumnProfile> columns) {

    public Recognized {
        first = List.copyOf(first);
        columns = List.copyOf(columns);
    }
}
