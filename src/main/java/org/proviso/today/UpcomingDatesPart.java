package org.proviso.today;

import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.proviso.today.UpcomingDates.UpcomingDate;
import org.proviso.ui.Links;
import org.proviso.ui.UsDates;

/** The deadlines ahead, next first: each moment has one clock, and the references are told when they are asked for. */
@Tag("section")
final class UpcomingDatesPart extends HtmlContainer {

    private static final int SHOWN = 6;

    UpcomingDatesPart(List<UpcomingDate> ahead, Optional<String> meeting, LocalDateTime now) {
        addClassName("clocks");
        add(new H2("Deadlines"));
        if (ahead.isEmpty()) {
            add(new Paragraph("All deadlines have passed."));
        }
        meeting.ifPresent(words -> add(new Paragraph(words)));
        Map<LocalDateTime, List<UpcomingDate>> clocks = ahead.stream()
                .collect(Collectors.groupingBy(UpcomingDate::at, LinkedHashMap::new, Collectors.toList()));
        Div list = new Div();
        list.getElement().setAttribute("role", "list");
        clocks.entrySet().stream()
                .limit(SHOWN)
                .forEach(clock -> list.add(clock(clock.getKey(), clock.getValue(), now)));
        add(list);
        add(new Paragraph(Links.link("All deadlines", "calendar")));
    }

    private static Div clock(LocalDateTime at, List<UpcomingDate> dates, LocalDateTime now) {
        Div clock = new Div();
        clock.getElement().setAttribute("role", "listitem");
        Div whats = new Div();
        dates.forEach(date -> whats.add(new Div(date.what())));
        Span moment = new Span(UsDates.near(at));
        moment.addClassNames("num", "at");
        Span left = new Span("in " + UsDates.left(now, at));
        left.addClassNames("soft", "small");
        clock.add(whats, moment, left, references(at, dates));
        clock.addClassName("clock");
        return clock;
    }

    private static Details references(LocalDateTime at, List<UpcomingDate> dates) {
        Div all = new Div();
        dates.forEach(date -> all.add(new Paragraph(date.what() + ": " + date.behind())));
        all.addClassNames("soft", "small");
        // Several of them stand on the page: who hears only their names is told of which deadline each is.
        Span when = new Span(" for " + UsDates.near(at));
        when.addClassName("heard");
        Details references = new Details(new Span(new Text(dates.size() == 1 ? "Reference" : "References"), when), all);
        references.addClassName("fold");
        return references;
    }
}
