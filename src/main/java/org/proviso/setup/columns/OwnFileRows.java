package org.proviso.setup.columns;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import java.util.List;
import org.proviso.files.mapping.ColumnProfile;
import org.proviso.files.mapping.Recognized;
import org.proviso.ui.LabeledValues;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;

/** What was recognized of an office's file, and its first rows as they stand there. */
final class OwnFileRows extends Div {

    private static final int SHOWN = 5;

    OwnFileRows(String name, Recognized file) {
        add(new H2("What was recognized"));
        add(new LabeledValues()
                .add("File", name + ", " + UsDates.count(file.rows(), "row"))
                .add(
                        "Encoding",
                        file.form().encoding().name()
                                + (file.encodingSure() ? "" : " (not sure: look at names with accents)"))
                .add("Between cells", ColumnsTable.words(file.form().delimiter().code()))
                .add("First row", file.form().header() ? "names the columns" : "is a row of the list"));
        add(new H2("The first rows of your file"), scrolling(table(file)));
    }

    /** A wide table is scrolled by itself; the page never is. */
    static Div scrolling(PlainTable table) {
        Div scrolls = new Div(table);
        scrolls.addClassName("scrolls");
        scrolls.getElement().setAttribute("tabindex", "0");
        scrolls.getElement().setAttribute("role", "group");
        scrolls.getElement().setAttribute("aria-label", "Rows; scroll sideways");
        return scrolls;
    }

    private static PlainTable table(Recognized file) {
        List<String> columns = file.columns().stream().map(ColumnProfile::name).toList();
        PlainTable table = new PlainTable("The first rows of your file", columns.toArray(String[]::new));
        file.first().stream().limit(SHOWN).forEach(row -> table.row(row.toArray(String[]::new)));
        return table;
    }
}
