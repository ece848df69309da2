package org.proviso.files.mapping;

import java.util.List;

/**
 * What a mapping makes of a file: its first rows in our columns, how many rows there are, how many of them have another
 * number of cells than the header, the columns that the mapping does not know, and what does not fit.
 */
public record Preview(
        List<List<String>> first, long rows, long wrongRows, List<String> newColumns, List<Misfit> misfits) {

    public Preview {
        first = List.copyOf(first);
    }

    /** How many values a load would refuse or set aside. */
    public long refused() {
        return wrongRows
                + misfits.stream()
                        .filter(Misfit::refused)
                        .mapToLong(Misfit::count)
                        .sum();
    }
}
