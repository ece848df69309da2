package org.proviso.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasText;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.proviso.files.table.TableColumn;

/**
 * A table of a few rows with hairlines; a long list is a {@link RowGrid}. Its caption is for screen readers. In a narrow window
 * one of many columns is read row by row, each value behind its heading.
 */
@Tag("table")
public final class PlainTable extends HtmlContainer implements ListedRows {

    private static final int MANY = 4;

    private final TablePiece body = new TablePiece("tbody");
    private final List<String> headings;
    private final Set<String> figures = new HashSet<>();
    private final Set<String> acts = new HashSet<>();
    private final List<List<Component>> rows = new ArrayList<>();

    public PlainTable(String caption, String... headings) {
        addClassName("plain");
        setClassName("stacks", headings.length >= MANY);
        this.headings = List.of(headings);
        TablePiece title = new TablePiece("caption");
        title.addClassName("heard");
        title.setText(caption);
        TablePiece head = new TablePiece("tr");
        for (String heading : headings) {
            head.add(heading(heading));
        }
        TablePiece top = new TablePiece("thead");
        top.add(head);
        add(title, top, body);
    }

    /** A column of buttons has no heading. */
    private static TablePiece heading(String words) {
        TablePiece cell = new TablePiece(words.isEmpty() ? "td" : "th");
        cell.setText(words);
        if (!words.isEmpty()) {
            cell.getElement().setAttribute("scope", "col");
        }
        return cell;
    }

    /** The columns under these headings hold figures, which a spreadsheet may add up. */
    public PlainTable figures(String... under) {
        figures.addAll(List.of(under));
        return this;
    }

    /** The columns under these headings hold only what is pressed, and are in no file. */
    public PlainTable acts(String... under) {
        acts.addAll(List.of(under));
        return this;
    }

    @Override
    public List<TableColumn> columns() {
        return headings.stream()
                .filter(this::isListed)
                .map(heading -> new TableColumn(heading, figures.contains(heading)))
                .toList();
    }

    @Override
    public void each(Consumer<List<String>> row) {
        for (List<Component> cells : rows) {
            List<String> words = new ArrayList<>();
            for (int column = 0; column < headings.size(); column++) {
                if (isListed(headings.get(column))) {
                    words.add(column < cells.size() ? CellText.of(cells.get(column)) : "");
                }
            }
            row.accept(words);
        }
    }

    private boolean isListed(String heading) {
        return !heading.isEmpty() && !acts.contains(heading);
    }

    /** One row of plain texts. */
    public PlainTable row(String... cells) {
        return row(Stream.of(cells).map(text -> (Component) new Span(text)).toList());
    }

    public PlainTable row(List<Component> cells) {
        rows.add(List.copyOf(cells));
        TablePiece row = new TablePiece("tr");
        for (Component cell : cells) {
            int column = row.getElement().getChildCount();
            TablePiece place = new TablePiece(column == 0 && says(cell) ? "th" : "td");
            if (place.getElement().getTag().equals("th")) {
                place.getElement().setAttribute("scope", "row");
            }
            if (column < headings.size()) {
                place.getElement().setAttribute("data-heading", headings.get(column));
            }
            place.add(cell);
            row.add(place);
        }
        body.add(row);
        return this;
    }

    /** Whether the cell has words of its own, which say what its row is about; a box to tick has none. */
    private static boolean says(Component cell) {
        return (cell instanceof Span || cell instanceof Anchor)
                && !cell.getElement().getTextRecursively().isBlank();
    }

    /** A piece of a table. */
    private static final class TablePiece extends HtmlContainer implements HasText {
        TablePiece(String tag) {
            super(tag);
        }
    }
}
