package org.proviso.canvass.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import java.util.Locale;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.TypedField;

/** Which rows of the sheet are on the screen: a page of those that are sought. */
final class SheetPaging extends Div {

    /** Boxes for so many rows are made and sent at a time; more make a browser slow. */
    static final int ROWS = 25;

    /** Which rows are chosen: those whose place has this text, and of them only those to put right. */
    record Chosen(String text, boolean onlyOff) {

        boolean isSought(String place) {
            return place.toLowerCase(Locale.ROOT).contains(text.toLowerCase(Locale.ROOT));
        }

        /** Empty where every row is. */
        String words() {
            String found = text.isEmpty() ? "" : "Find a location: " + text;
            return found + (found.isEmpty() || !onlyOff ? "" : "; ") + (onlyOff ? "Only rows to put right" : "");
        }
    }

    private final TypedField sought = new TypedField("sought", "Find a location");
    private final ActButton onlyOff = new ActButton("Only rows to put right");
    private final ActButton before = new ActButton("Previous rows").quiet();
    private final ActButton after = new ActButton("Next rows").quiet();
    private final Span which = new Span();
    private boolean off;
    private int first;

    SheetPaging(Runnable show) {
        addClassName("paging");
        which.getElement().setAttribute("role", "status");
        sought.onTyped(text -> go(0, show));
        onlyOff.getElement().setAttribute("aria-pressed", "false");
        onlyOff.does(() -> {
            off = !off;
            onlyOff.getElement().setAttribute("aria-pressed", String.valueOf(off));
            go(0, show);
        });
        before.does(() -> go(first - ROWS, show));
        after.does(() -> go(first + ROWS, show));
        add(sought, onlyOff, which, before, after);
    }

    private void go(int to, Runnable show) {
        first = Math.max(0, to);
        show.run();
    }

    Chosen chosen() {
        return new Chosen(sought.text(), off);
    }

    /** The page of these rows that is on the screen. */
    <T> List<T> page(List<T> rows) {
        if (first >= rows.size()) {
            first = 0;
        }
        int end = Math.min(first + ROWS, rows.size());
        which.setText(rows.isEmpty() ? "No such rows." : "Rows " + (first + 1) + " to " + end + " of " + rows.size());
        before.setVisible(first > 0);
        after.setVisible(end < rows.size());
        return rows.subList(first, end);
    }
}
