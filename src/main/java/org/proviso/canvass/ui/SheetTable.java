package org.proviso.canvass.ui;

import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.List;
import org.proviso.canvass.Figure;
import org.proviso.canvass.sheet.SheetRow;

/** A table of the sheet, with only the rows that are on the screen. */
@Tag("table")
final class SheetTable extends HtmlContainer {

    private final List<Figure> columns;
    private final boolean open;
    private final String id;
    private final SheetLine.Desk desk;
    private final SheetLine.Piece body = new SheetLine.Piece("tbody");
    private final List<SheetLine> lines = new ArrayList<>();

    SheetTable(String caption, String id, List<Figure> columns, boolean open, SheetLine.Desk desk) {
        this.columns = columns;
        this.open = open;
        this.id = id;
        this.desk = desk;
        addClassNames("plain", "figures", "balances");
        getElement().setAttribute("data-typing", "settle");
        SheetLine.Piece title = new SheetLine.Piece("caption");
        title.addClassName("heard");
        title.add(new Span(caption));
        SheetLine.Piece heads = new SheetLine.Piece("tr");
        heads.add(heading("Place"));
        columns.forEach(figure -> heads.add(heading(SheetColumns.heading(figure))));
        heads.add(new SheetLine.Piece("td"));
        SheetLine.Piece top = new SheetLine.Piece("thead");
        top.add(heads);
        add(title, top, body);
    }

    private static SheetLine.Piece heading(String words) {
        SheetLine.Piece cell = new SheetLine.Piece("th");
        cell.getElement().setAttribute("scope", "col");
        cell.add(new Span(words));
        return cell;
    }

    List<SheetLine> lines() {
        return lines;
    }

    /** Puts these rows in the place of those on the screen; the boxes that are there are used again. */
    void show(List<SheetRow> rows, SheetEntries entries) {
        for (int at = 0; at < rows.size(); at++) {
            SheetRow row = rows.get(at);
            if (at < lines.size() && !lines.get(at).isFor(row)) {
                cut(at);
            }
            if (at == lines.size()) {
                SheetLine line = new SheetLine(row, columns, open, id + "-" + at, desk);
                lines.add(line);
                body.add(line);
            }
            lines.get(at).show(row, entries);
        }
        cut(rows.size());
    }

    private void cut(int from) {
        while (lines.size() > from) {
            body.remove(lines.remove(lines.size() - 1));
        }
    }
}
