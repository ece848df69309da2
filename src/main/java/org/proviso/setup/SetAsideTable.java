package org.proviso.setup;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.files.SetAsideRow;
import org.proviso.roll.ListReadService;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;

/** The rows of a list that are set aside: the first hundred, and all of them as a file. */
final class SetAsideTable extends Div {

    static final int SHOWN = 100;

    /** A row as it came is shown up to here; the file has it whole. */
    private static final int LONGEST = 200;

    SetAsideTable(ListReadService lists, ElectionId election, int snapshotNo, int count) {
        this(lists.firstAside(election, snapshotNo, SHOWN), count);
        add(file(election, snapshotNo));
    }

    /** The rows of lists that are not in the office yet. */
    SetAsideTable(List<SetAsideRow> first, int count) {
        PlainTable table =
                new PlainTable("Rows that could not be read", "List", "Line", "Column", "Error", "Row as it came");
        first.forEach(row ->
                table.row(row.list(), String.valueOf(row.line()), row.column(), row.reason(), cut(row.asItCame())));
        add(table);
        if (count > first.size()) {
            add(new Paragraph("And " + UsDates.count(count - first.size(), "more row") + "."));
        }
    }

    private static Anchor file(ElectionId election, int snapshotNo) {
        Anchor file = new Anchor(
                SetAsideFileController.address(election, snapshotNo),
                "All rows set aside of list " + snapshotNo + " (CSV)");
        file.setRouterIgnore(true);
        file.getElement().setAttribute("download", true);
        return file;
    }

    private static String cut(String row) {
        return row.length() <= LONGEST ? row : row.substring(0, LONGEST) + "...";
    }
}
