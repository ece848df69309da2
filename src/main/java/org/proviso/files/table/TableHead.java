package org.proviso.files.table;

import java.util.List;

/**
 * What a list is, before its rows.
 *
 * @param title the name of the list, as on its page
 * @param about what the file says about itself: the election, the moment, the filter, the head of the ledger
 * @param columns in the order of the page
 */
public record TableHead(String title, List<About> about, List<TableColumn> columns) {

    public TableHead {
        about = List.copyOf(about);
        columns = List.copyOf(columns);
    }

    /** One line of what a file says about itself: {@code Filter}, {@code Outlook: reject}. */
    public record About(String name, String words) {}
}
