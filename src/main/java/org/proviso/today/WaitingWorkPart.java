package org.proviso.today;

import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import org.proviso.ui.Links;
import org.proviso.ui.UsDates;

/** What is waiting, a line each, with since when the oldest waits and the link that starts it. */
@Tag("section")
final class WaitingWorkPart extends HtmlContainer {

    WaitingWorkPart(List<WaitingWork> lines, ZoneId zone) {
        add(new H2("Waiting for you"));
        if (lines.isEmpty()) {
            Paragraph none = new Paragraph("Nothing is waiting for you.");
            none.addClassName("soft");
            add(none);
        }
        Div list = new Div();
        list.getElement().setAttribute("role", "list");
        lines.forEach(line -> list.add(line(line, zone)));
        add(list);
    }

    private static Div line(WaitingWork waiting, ZoneId zone) {
        Span number = new Span(String.format(java.util.Locale.US, "%,d", waiting.number()));
        number.addClassName("figure");
        Span since = new Span(
                waiting.since() == null ? "" : "since " + UsDates.near(LocalDateTime.ofInstant(waiting.since(), zone)));
        Span what = what(waiting);
        what.setClassName("stops", waiting.late());
        since.setClassName("stops", waiting.late());
        Div line = new Div(number, what, since, new Span(link(waiting)));
        line.addClassName("line");
        line.getElement().setAttribute("role", "listitem");
        return line;
    }

    private static Anchor link(WaitingWork waiting) {
        return waiting.key() == null
                ? Links.link(waiting.link(), waiting.path())
                : Links.link(waiting.link(), waiting.path(), waiting.key());
    }

    private static Span what(WaitingWork waiting) {
        Small detail = new Small();
        detail.getElement().setText(waiting.detail());
        Span what = new Span(new Span(waiting.what()), detail);
        return what;
    }

    /** Small text under a line. */
    @Tag("small")
    private static final class Small extends HtmlContainer {}
}
