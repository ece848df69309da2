package org.proviso.roll.aside;

import java.util.List;
import org.proviso.core.ElectionId;

/**
 * To mend a row that is set aside: of which list, its place among the rows set aside, their hash as whoever mends it saw
 * them, the cells as they should be under their columns, and why.
 */
public record MendRow(
        ElectionId electionId,
        int snapshotNo,
        int rowNo,
        String seenHash,
        List<String> columns,
        List<String> cells,
        String because) {

    public MendRow {
        columns = List.copyOf(columns);
        cells = List.copyOf(cells);
    }
}
