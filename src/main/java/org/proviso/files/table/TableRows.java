package org.proviso.files.table;

import java.util.List;

/** Takes the rows of a list one after the other, each with a cell for every column. */
@FunctionalInterface
public interface TableRows {
    void row(List<String> cells);
}
