package org.proviso.review.ui.desk;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Collectors;
import org.proviso.core.CourtOrder;
import org.proviso.core.Envelope;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.calendar.Deadline;
import org.proviso.election.RecordedCourtOrder;
import org.proviso.review.file.CaseFile;
import org.proviso.ui.UsDates;

/** The head of a case: which envelope, where, when and why it was cast; at the right, the time left and who it is assigned to. */
public final class CaseHead extends Div {

    private final H1 title = new H1();

    public CaseHead(CaseFile file, Component... beside) {
        addClassNames("head", "case-head");
        Span number = new Span(file.now().key().envelopeNo().value());
        number.addClassName("num");
        title.add(new Span("Envelope "), number);
        title.getElement().setAttribute("tabindex", "-1");
        Paragraph cast = new Paragraph(cast(file.report().envelope().cast()));
        cast.addClassName("soft");
        Div aside = new Div(clock(file), held(file));
        aside.addClassName("case-clock");
        Div top = new Div(title, cast);
        file.orders().stream()
                .map(RecordedCourtOrder::order)
                .filter(CourtOrder::binds)
                .forEach(order -> top.add(ordered(order)));
        add(top, aside);
        aside.add(beside);
    }

    /** Moves the focus to the top of the case. */
    public void focusTitle() {
        title.getElement().callJsFunction("focus");
    }

    /** A court's order that binds stands above everything the rules say. */
    private static Component ordered(CourtOrder order) {
        String words = switch (order.kind()) {
            case COUNT -> "count this envelope";
            case REJECT -> "reject this envelope";
            case HOLD -> "hold this envelope";
            case PRESERVE -> "preserve this envelope unopened";
            case OPEN -> "open this envelope";
            case EXTEND -> "voting hours were extended";
        };
        Paragraph line = new Paragraph(
                "Court order: " + words + ". " + order.court() + ", " + UsDates.digits(order.date()) + ".");
        line.addClassName("warn");
        return line;
    }

    private static String cast(Envelope.Cast cast) {
        String place = cast.votingLocation().isEmpty() ? "Received by mail" : cast.votingLocation();
        String where = place + (cast.precinct().isEmpty() ? ", cast" : ", cast in precinct " + cast.precinct());
        String style = cast.ballotStyle().isEmpty() ? "" : ", ballot style " + cast.ballotStyle();
        LocalDateTime at = cast.at();
        String when = at == null ? "" : ", at " + UsDates.hour(at.toLocalTime());
        String why = cast.issueReasons().stream().map(DateWords::code).collect(Collectors.joining(", "));
        return where + style + when + (why.isEmpty() ? "" : " \u00B7 reason issued:  " + why);
    }

    private static Component clock(CaseFile file) {
        LocalDateTime now = file.around().asOf();
        Optional<LocalDateTime> voter = voterUntil(file.report());
        if (voter.isPresent()) {
            return line("Voter's time left: ", UsDates.left(now, voter.get()));
        }
        return file.around()
                .decideBy()
                .map(by -> by.isBefore(now)
                        ? line("Decisions were due ", UsDates.near(by))
                        : line("Decisions are due in ", UsDates.left(now, by)))
                .orElseGet(() -> line("", ""));
    }

    private static Optional<LocalDateTime> voterUntil(CaseReport report) {
        return report.asks().stream()
                .flatMap(ask -> ask.deadline().stream())
                .map(Deadline::lastMoment)
                .min(Comparator.naturalOrder());
    }

    private static Component line(String words, String left) {
        Span strong = new Span(left);
        strong.addClassNames("waits", "strong");
        return new Div(new Span(words), strong);
    }

    private static Component held(CaseFile file) {
        CaseFile.Assignment holding = file.holding();
        String since =
                holding.since().map(at -> " since " + sinceWords(file, at)).orElse("");
        String words = holding.yours()
                ? "Assigned to you" + since
                : holding.by().isEmpty() ? file.now().state().words() : "Assigned to " + holding.by() + since;
        Div held = new Div(new Span(words));
        held.addClassName("soft");
        return held;
    }

    private static String sinceWords(CaseFile file, LocalDateTime at) {
        boolean today = at.toLocalDate().equals(file.around().asOf().toLocalDate());
        return today ? UsDates.hour(at.toLocalTime()) : UsDates.near(at);
    }
}
