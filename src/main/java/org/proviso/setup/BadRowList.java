package org.proviso.setup;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import org.proviso.files.InputException;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;

/** Every row with an error in a refused file, so that all can be fixed at once. */
final class BadRowList extends Div {

    BadRowList(InputException refused) {
        PlainTable table = new PlainTable("Errors in the files", "File", "Line", "Column", "Error");
        for (InputException badRow : refused.all()) {
            table.row(
                    badRow.file(),
                    badRow.line() == 0 ? "whole file" : String.valueOf(badRow.line()),
                    badRow.column(),
                    badRow.reason());
        }
        add(table);
        if (refused.untold() > 0) {
            add(new Paragraph("And " + UsDates.count(refused.untold(), "more row") + " with errors."));
        }
    }

    /** The first error, and whether there are others, for the message line. */
    static String inShort(InputException refused) {
        String first = String.valueOf(refused.all().get(0).getMessage());
        return refused.all().size() == 1 ? first : first + ". Other rows also have errors.";
    }
}
