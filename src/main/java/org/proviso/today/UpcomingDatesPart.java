package org.proviso.today;

import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.time.LocalDateTime;
import java.util.List;
import org.proviso.today.UpcomingDates.UpcomingDate;
import org.proviso.ui.Links;
import org.proviso.ui.UsDates;

/** The deadlines ahead, next first, with the time left. */
@Tag("section")
final class UpcomingDatesPart extends HtmlContainer {

    private static final int SHOWN = 6;

    UpcomingDatesPart(List<UpcomingDate> ahead, LocalDateTime now) {
        addClassName("clocks");
        add(new H2("Deadlines"));
        if (ahead.isEmpty()) {
            add(new Paragraph("All deadlines have passed."));
        }
        ahead.stream().limit(SHOWN).forEach(moment -> add(clock(moment, now)));
        add(new Paragraph(Links.link("All deadlines", "calendar")));
    }

    private static Span clock(UpcomingDate moment, LocalDateTime now) {
        Span at = new Span(UsDates.near(moment.at()));
        at.addClassNames("num", "at");
        Span behind = new Span("in " + UsDates.left(now, moment.at()) + " · " + moment.behind());
        behind.addClassNames("soft", "small");
        Span clock = new Span(new Span(moment.what()), at, behind);
        clock.addClassName("clock");
        return clock;
    }
}
