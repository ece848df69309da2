package org.proviso.roll.aside;

import java.util.List;
import org.proviso.files.SetAsideRow;

/** A row that is set aside, with the columns of its list and its cells as far as there are any, to be mended by hand. */
public record MendableRow(SetAsideRow row, String rowsHash, List<String> columns, List<String> cells) {

    public MendableRow {
        columns = List.copyOf(columns);
        cells = List.copyOf(cells);
    }
}
