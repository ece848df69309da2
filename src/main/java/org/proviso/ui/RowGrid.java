package org.proviso.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.grid.Grid;
import com.vaadin.flow.component.grid.GridVariant;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.data.provider.DataProvider;
import com.vaadin.flow.data.provider.Query;
import com.vaadin.flow.function.ValueProvider;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.IntSupplier;
import org.proviso.files.table.TableColumn;

/** A long list. It fetches only the rows on the screen and explains an empty list in a sentence. */
public final class RowGrid<T> extends Grid<T> {

    /** As many rows as are read at a time for a file. */
    private static final int TOGETHER = 1_000;

    private final Map<Column<T>, ValueProvider<T, String>> cells = new LinkedHashMap<>();
    private final Set<String> acts = new HashSet<>();

    /** Fetches rows of a list. */
    @FunctionalInterface
    public interface RowFetcher<T> {
        List<T> fetch(int offset, int limit);
    }

    /** The library's list asks for Enter twice: once to go into a cell, and once for the link in it. */
    private static final String ENTER_FOLLOWS = """
            this.addEventListener('keydown', event => {
              const cell = event.composedPath()[0];
              if (event.key !== 'Enter' || cell.localName !== 'td') return;
              const found = [...cell.querySelectorAll('slot')].flatMap(slot => slot.assignedElements())
                  .flatMap(part => [...part.querySelectorAll('a[href], button, vaadin-checkbox, input')]);
              if (found.length === 1 && found[0].matches('a, button')) {
                event.preventDefault();
                event.stopImmediatePropagation();
                found[0].click();
              }
            }, true)""";

    /** {@code name} is for screen readers; {@code whenEmpty} says what appears here and when. */
    public RowGrid(String name, String whenEmpty) {
        addThemeVariants(GridVariant.LUMO_COMPACT, GridVariant.LUMO_NO_BORDER, GridVariant.LUMO_WRAP_CELL_CONTENT);
        addClassName("rows");
        setSelectionMode(SelectionMode.NONE);
        setAriaLabel(name);
        setEmptyStateText(whenEmpty);
        addAttachListener(attached -> keepFirstColumn());
    }

    /** Where the window is narrower than the list, the first column stays while the others are scrolled to. */
    private void keepFirstColumn() {
        getColumns().stream().findFirst().ifPresent(first -> first.setFrozen(true));
    }

    /** The first column says which row it is, also to somebody who hears the list. */
    @Override
    protected void onAttach(AttachEvent event) {
        super.onAttach(event);
        getColumns().stream().findFirst().ifPresent(first -> first.setRowHeader(true));
        getElement().executeJs(ENTER_FOLLOWS);
    }

    /** A column of words. */
    public RowGrid<T> words(String heading, String width, ValueProvider<T, String> value) {
        Column<T> column = addColumn(value).setHeader(heading).setWidth(width).setFlexGrow(1);
        cells.put(column, value);
        return this;
    }

    @Override
    public <V extends Component> Column<T> addComponentColumn(ValueProvider<T, V> cell) {
        Column<T> column = super.addComponentColumn(cell);
        cells.put(column, row -> CellText.of(cell.apply(row)));
        return column;
    }

    /** These columns hold only what is pressed, and are in no file. */
    public RowGrid<T> acts(String... headings) {
        acts.addAll(List.of(headings));
        return this;
    }

    /** The whole list as it is narrowed now, for a file. Its rows are fetched when they are asked for, some at a time. */
    public ListedRows listed() {
        List<Column<T>> headed = getColumns().stream()
                .filter(column -> column.getHeaderText() != null
                        && !column.getHeaderText().isEmpty()
                        && !acts.contains(column.getHeaderText()))
                .toList();
        return new Listed<>(
                headed.stream()
                        .map(column -> TableColumn.text(column.getHeaderText()))
                        .toList(),
                headed.stream()
                        .map(column -> Objects.requireNonNull(cells.get(column), "each column has its words"))
                        .toList(),
                getDataProvider());
    }

    private record Listed<T>(
            List<TableColumn> columns, List<ValueProvider<T, String>> cells, DataProvider<T, ?> provider)
            implements ListedRows {

        @Override
        public void each(Consumer<List<String>> row) {
            int at = 0;
            List<T> page;
            do {
                page = provider.fetch(new Query<>(at, TOGETHER, List.of(), null, null))
                        .toList();
                page.forEach(item ->
                        row.accept(cells.stream().map(cell -> cell.apply(item)).toList()));
                at += page.size();
            } while (page.size() == TOGETHER);
        }
    }

    /** A column of numbers, in the number font. */
    public RowGrid<T> number(String heading, String width, ValueProvider<T, String> value) {
        addComponentColumn(row -> {
                    Span number = new Span(value.apply(row));
                    number.addClassName("num");
                    return number;
                })
                .setHeader(heading)
                .setWidth(width)
                .setFlexGrow(0);
        return this;
    }

    /** Shows rows fetched a screen at a time, as many as are counted. */
    public void show(RowFetcher<T> rows, IntSupplier count) {
        setItems(DataProvider.fromCallbacks(
                query -> rows.fetch(query.getOffset(), query.getLimit()).stream(), query -> count.getAsInt()));
    }
}
