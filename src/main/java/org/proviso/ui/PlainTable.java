package org.proviso.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasText;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import java.util.stream.Stream;

/** A table of a few rows with hairlines; a long list is a {@link RowGrid}. Its caption is for screen readers. */
@Tag("table")
public final class PlainTable extends HtmlContainer {

    private final Part body = new Part("tbody");

    public PlainTable(String caption, String... headings) {
        addClassName("plain");
        Part title = new Part("caption");
        title.addClassName("heard");
        title.setText(caption);
        Part head = new Part("tr");
        for (String heading : headings) {
            head.add(heading(heading));
        }
        Part top = new Part("thead");
        top.add(head);
        add(title, top, body);
    }

    /** A column of buttons has no heading. */
    private static Part heading(String words) {
        Part cell = new Part(words.isEmpty() ? "td" : "th");
        cell.setText(words);
        if (!words.isEmpty()) {
            cell.getElement().setAttribute("scope", "col");
        }
        return cell;
    }

    /** One row of plain texts. */
    public PlainTable row(String... cells) {
        return row(Stream.of(cells).map(text -> (Component) new Span(text)).toList());
    }

    public PlainTable row(List<Component> cells) {
        Part row = new Part("tr");
        for (Component cell : cells) {
            Part place = new Part("td");
            place.add(cell);
            row.add(place);
        }
        body.add(row);
        return this;
    }

    /** A piece of a table. */
    private static final class Part extends HtmlContainer implements HasText {
        Part(String tag) {
            super(tag);
        }
    }
}
