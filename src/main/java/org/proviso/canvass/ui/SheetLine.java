package org.proviso.canvass.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.canvass.BalanceResult;
import org.proviso.canvass.Figure;
import org.proviso.canvass.sheet.SheetCell;
import org.proviso.canvass.sheet.SheetRow;
import org.proviso.ui.field.ActButton;

/** One row of the sheet: a box for each figure a person supplies, the numbers the program counts, and how the row stands. */
@Tag("tr")
final class SheetLine extends HtmlContainer {

    /** What the sheet does with what happens in a row. */
    interface Desk {
        void typed(SheetLine line, Figure figure, String text);

        /** A box has the focus: its source can be read. */
        void at(SheetLine line, Figure figure);

        void save(SheetLine line);
    }

    /** Enough for a heading and a border at the browser's own pace. */
    private static final int PAUSE = 300;

    private final Map<Figure, Input> boxes = new EnumMap<>(Figure.class);
    private final Map<Figure, Span> numbers = new EnumMap<>(Figure.class);
    private final Map<Figure, Span> sources = new EnumMap<>(Figure.class);
    private final Span place = new Span();
    private final Span stands = new Span();
    private final Span why = new Span();
    private final ActButton save = new ActButton("Save row").quiet();
    private SheetRow row;

    SheetLine(SheetRow row, List<Figure> columns, boolean open, String id, Desk desk) {
        this.row = row;
        Piece name = new Piece("th");
        name.getElement().setAttribute("scope", "row");
        why.addClassName("why");
        why.setId(id + "-why");
        stands.addClassName("stands");
        name.add(place, stands, why);
        add(name);
        columns.forEach(figure -> {
            Piece cell = new Piece("td");
            cell.add(open && row.typed().contains(figure) ? box(figure, id, desk) : number(figure));
            Span source = new Span();
            source.addClassName("from");
            sources.put(figure, source);
            cell.add(source);
            add(cell);
        });
        save.does(() -> desk.save(this));
        Piece end = new Piece("td");
        end.add(save);
        add(end);
    }

    /** Whether it can show that row: the county's has no boxes for the figures of a location. */
    boolean isFor(SheetRow other) {
        return row.where().isCounty() == other.where().isCounty();
    }

    SheetRow row() {
        return row;
    }

    private Component box(Figure figure, String id, Desk desk) {
        Input box = new Input();
        box.setId(id + "-" + figure.code());
        box.setValueChangeMode(ValueChangeMode.LAZY);
        box.setValueChangeTimeout(PAUSE);
        box.getElement().setAttribute("inputmode", "numeric");
        box.getElement().setAttribute("autocomplete", "off");
        box.getElement().setAttribute("aria-describedby", id + "-why");
        box.addValueChangeListener(event -> {
            if (event.isFromClient()) {
                desk.typed(this, figure, box.getValue().strip());
            }
        });
        box.getElement().addEventListener("focus", event -> desk.at(this, figure));
        boxes.put(figure, box);
        return box;
    }

    private Component number(Figure figure) {
        Span number = new Span();
        numbers.put(figure, number);
        return number;
    }

    /** Shows the row as it is, with what was typed over it. */
    void show(SheetRow now, SheetEntries entries) {
        row = now;
        place.setText(now.where().words());
        save.setAriaLabel("Save row " + now.where().words());
        numbers.forEach((figure, number) -> number.setText(
                now.cell(figure).number() == null ? "–" : now.cell(figure).text()));
        boxes.forEach((figure, box) -> {
            SheetCell cell = now.cell(figure);
            SheetEntries.Box at = SheetEntries.Box.of(now, figure);
            String text = entries.text(at).orElse(cell.text());
            if (!text.equals(box.getValue())) {
                box.setValue(text);
            }
            box.getElement()
                    .setAttribute(
                            "aria-label",
                            SheetColumns.heading(figure).replace("\u00ad", "") + ", "
                                    + now.where().words() + ", " + cell.words());
        });
        mark(entries);
    }

    private void mark(SheetEntries entries) {
        boxes.forEach((figure, box) -> {
            SheetEntries.Box at = SheetEntries.Box.of(row, figure);
            boolean changed = entries.text(at).isPresent();
            String problem = entries.problem(at);
            box.setClassName("typed-over", changed);
            box.getElement().setAttribute("aria-invalid", String.valueOf(!problem.isEmpty()));
            source(figure).setText(!problem.isEmpty() ? "number?" : changed ? before(row.cell(figure)) : from(figure));
        });
        numbers.keySet().forEach(figure -> source(figure).setText(from(figure)));
        save.setVisible(entries.has(row.where()));
    }

    private static String before(SheetCell cell) {
        return cell.number() == null ? "new" : "was " + cell.number();
    }

    private String from(Figure figure) {
        return row.cell(figure).source().words();
    }

    private Span source(Figure figure) {
        return java.util.Objects.requireNonNull(sources.get(figure), "every column has its source");
    }

    /** Marks the row by the totals that are held to it, as they stand with what was typed. */
    void balance(List<BalanceResult> results, SheetEntries entries) {
        mark(entries);
        List<BalanceResult> off =
                results.stream().filter(BalanceResult.Differs.class::isInstance).toList();
        long lacking = results.stream()
                .filter(BalanceResult.CannotBeChecked.class::isInstance)
                .count();
        boolean explained = results.stream().anyMatch(BalanceResult.Explained.class::isInstance);
        stands.setText(
                !off.isEmpty() ? "≠ Off" : lacking > 0 ? "… Not complete" : explained ? "= Explained" : "= Agrees");
        stands.setClassName("warn", !off.isEmpty());
        stands.setClassName("soft", off.isEmpty());
        why.setText(off.stream().map(BalanceResult::words).reduce("", (all, one) -> (all + " " + one).strip()));
        why.setVisible(!off.isEmpty());
        Set<Figure> wrong = EnumSet.noneOf(Figure.class);
        off.forEach(balance -> wrong.addAll(balance.identity().figures()));
        boxes.forEach((figure, box) -> box.setClassName("off", wrong.contains(figure)));
        numbers.forEach((figure, number) -> number.setClassName("off", wrong.contains(figure)));
    }

    /** A piece of the row. */
    static final class Piece extends HtmlContainer {
        Piece(String tag) {
            super(tag);
        }
    }
}
