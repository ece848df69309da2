package org.proviso.today.calendar;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import java.time.LocalDateTime;
import java.util.List;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.DeadlineList;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;

/** Dated deadlines, earliest first, each with the time left on the office's clock. */
final class DatesTable extends Composite<PlainTable> {

    private final List<DeadlineList.Line> lines;
    private final LocalDateTime now;

    DatesTable(List<DeadlineList.Line> lines, LocalDateTime now) {
        this.lines = lines;
        this.now = now;
    }

    @Override
    protected PlainTable initContent() {
        PlainTable table = new PlainTable("Dated deadlines", "When", "Deadline", "Rule", "Source", "Time left");
        lines.forEach(line -> table.row(row(line)));
        return table;
    }

    private List<Component> row(DeadlineList.Line line) {
        Deadline deadline = line.deadline().orElseThrow();
        boolean passed = deadline.hasPassed(now);
        Span by = new Span(passed ? "passed" : "in " + UsDates.left(now, deadline.lastMoment()));
        by.setClassName("soft", passed);
        return List.of(
                when(deadline, line, passed), what(line, passed), rule(line, deadline), source(line.given()), by);
    }

    private static Component when(Deadline deadline, DeadlineList.Line line, boolean passed) {
        Span day = new Span(UsDates.weekday(deadline.day()));
        Span hour = new Span(hour(deadline, line));
        hour.addClassNames("soft", "small");
        Div when = new Div(new Div(day), new Div(hour));
        when.addClassName(passed ? "soft" : "moment");
        return when;
    }

    private static String hour(Deadline deadline, DeadlineList.Line line) {
        return line.endsWithTheDay()
                ? "by end of day"
                : UsDates.hour(deadline.lastMoment().toLocalTime());
    }

    private static Component what(DeadlineList.Line line, boolean passed) {
        Span what = new Span(line.words());
        what.setClassName("soft", passed);
        return what;
    }

    private static Component rule(DeadlineList.Line line, Deadline deadline) {
        String moved = deadline.wasMoved()
                ? ". Moved from " + UsDates.near(deadline.counted()) + ", when the office is closed"
                : "";
        return new Span(line.given().value().inWords() + moved);
    }

    /** The rule's source. A source nobody has read is marked, since no ballot may be rejected on it. */
    static Component source(ResolvedRule given) {
        Span source = new Span(given.isKnown() ? given.reference().words() : "No source found.");
        source.setClassName("waits", !given.isFirm());
        return source;
    }
}
