package org.proviso.ui;

import java.util.List;
import java.util.function.Consumer;
import org.proviso.files.table.TableColumn;

/**
 * A list on a page, as a file has it: its columns by their headings and its rows in the page's words. Columns without a
 * heading, and buttons and boxes in a row, are no part of it.
 */
public interface ListedRows {

    List<TableColumn> columns();

    /** Every row in the order of the page, with a cell for each column. */
    void each(Consumer<List<String>> row);
}
