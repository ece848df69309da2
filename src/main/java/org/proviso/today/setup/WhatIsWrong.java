package org.proviso.today.setup;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import org.proviso.files.InputException;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;

/** Every bad row of a file that was refused, so that it is mended once. */
final class WhatIsWrong extends Div {

    WhatIsWrong(InputException refused) {
        PlainTable table = new PlainTable("What is wrong", "File", "Line", "Column", "Why");
        for (InputException one : refused.all()) {
            table.row(
                    one.file(),
                    one.line() == 0 ? "the whole file" : String.valueOf(one.line()),
                    one.column(),
                    one.reason());
        }
        add(table);
        if (refused.untold() > 0) {
            add(new Paragraph("And " + UsDates.count(refused.untold(), "more row") + "."));
        }
    }

    /** The first of them, and whether there are others, for the line at the top. */
    static String inShort(InputException refused) {
        String first = String.valueOf(refused.all().get(0).getMessage());
        return refused.all().size() == 1 ? first : first + ". Other rows are bad too.";
    }
}
