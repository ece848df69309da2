package org.proviso.canvass.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.proviso.canvass.Figure;
import org.proviso.canvass.sheet.SheetRow;
import org.proviso.files.table.TableColumn;
import org.proviso.ui.ListedRows;

/** Rows of the sheet of balances as a list: a figure nobody has noted is a dash, never zero. */
record SheetList(List<Figure> figures, List<SheetRow> rows) implements ListedRows {

    @Override
    public List<TableColumn> columns() {
        List<TableColumn> columns = new ArrayList<>(List.of(TableColumn.text("Place")));
        figures.forEach(figure ->
                columns.add(TableColumn.figures(SheetColumns.heading(figure).replace("\u00ad", ""))));
        return columns;
    }

    @Override
    public void each(Consumer<List<String>> row) {
        for (SheetRow line : rows) {
            List<String> cells = new ArrayList<>(List.of(line.where().words()));
            figures.forEach(figure -> cells.add(
                    line.cell(figure).number() == null
                            ? "\u2013"
                            : line.cell(figure).text()));
            row.accept(cells);
        }
    }
}
