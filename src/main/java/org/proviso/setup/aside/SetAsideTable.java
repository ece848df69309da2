package org.proviso.setup.aside;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import java.util.function.IntConsumer;
import org.proviso.core.ElectionId;
import org.proviso.files.SetAsideRow;
import org.proviso.roll.ListReadService;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;

/** The rows of a list that are set aside: the first hundred, and all of them as a file. */
public final class SetAsideTable extends Div {

    static final int SHOWN = 100;

    /** A row as it came is shown up to here; the file has it whole. */
    private static final int LONGEST = 200;

    public SetAsideTable(ListReadService lists, ElectionId election, int snapshotNo, int count) {
        this(lists.firstAside(election, snapshotNo, SHOWN), count);
        add(file(election, snapshotNo));
    }

    /** The rows of a list in use, each with a button that mends it; {@code mend} is handed its place among them. */
    public SetAsideTable(ListReadService lists, ElectionId election, int snapshotNo, IntConsumer mend) {
        PlainTable table = new PlainTable("Rows set aside", "Line", "Column", "Error", "Row as it came", "");
        int place = 0;
        for (SetAsideRow row : lists.firstAside(election, snapshotNo, SHOWN)) {
            int number = ++place;
            ActButton button = new ActButton("Mend");
            button.getElement().setAttribute("aria-label", "Mend line " + row.line());
            table.row(List.<Component>of(
                    new Span(String.valueOf(row.line())),
                    new Span(row.column()),
                    new Span(row.reason()),
                    new Span(cut(row.asItCame())),
                    button.quiet().does(() -> mend.accept(number))));
        }
        add(table, file(election, snapshotNo));
    }

    /** The rows of lists that are not in the office yet. */
    public SetAsideTable(List<SetAsideRow> first, int count) {
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
