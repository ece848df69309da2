package org.proviso.review.ui.desk;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import java.util.stream.Stream;
import org.proviso.core.CourtOrder;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.election.RecordedCourtOrder;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.file.CaseAddress;
import org.proviso.review.file.CaseFile;
import org.proviso.review.file.TimeLineEvent;
import org.proviso.review.ui.voters.CandidatesBeside;
import org.proviso.review.ui.voters.ChoiceLine;
import org.proviso.review.ui.voters.VoterLine;
import org.proviso.ui.Links;
import org.proviso.ui.PageSection;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;

/** The middle part: who the voter may be, what happened when, precincts of the addresses, other envelopes, orders. */
final class CaseRecordsPart extends Div {

    CaseRecordsPart(CasePageContext desk) {
        addClassName("part");
        getElement().setAttribute("tabindex", "0");
        getElement().setAttribute("role", "group");
        getElement().setAttribute("aria-label", "What the records say");
        CaseFile file = desk.file();
        PageSection section = new PageSection("says", "What the records say");
        Link link = file.report().link();
        if (file.around().voters().isEmpty() || link.identity() == VoterIdentityFact.SEVERAL_FIT) {
            section.add(new Paragraph(nobody(link)));
        }
        if (file.around().voters().size() > 1) {
            section.add(new CandidatesBeside(file, !(desk.mayWork() && desk.signatureHidden())));
        }
        file.around().choice().ifPresent(choice -> section.add(new ChoiceLine(choice)));
        file.around().voters().forEach(possibleVoter -> section.add(new VoterLine(possibleVoter)));
        section.add(timeLine(file.around().timeLine()));
        if (!file.around().homes().isEmpty()) {
            section.add(homes(file.around().homes()));
        }
        file.around().others().forEach(other -> section.add(other(other)));
        file.orders().forEach(order -> section.add(order(file, order)));
        section.add(new HistoryPart(desk));
        add(section);
    }

    private static String nobody(Link link) {
        if (link.identity() == VoterIdentityFact.SEVERAL_FIT) {
            return (link.doubt() + " Choose the voter.").strip();
        }
        return link.identity() == VoterIdentityFact.NOT_ON_ROLL
                ? "A search found no record of this voter."
                : "No record on the roll matches. Search for the voter and record the search.";
    }

    private static Component timeLine(List<TimeLineEvent> moments) {
        UnorderedList line = new UnorderedList();
        line.addClassNames("dated", "time-line");
        for (TimeLineEvent moment : moments) {
            Span day = new Span(moment.day() == null ? "no date" : UsDates.digits(moment.day()));
            day.addClassNames("num", "soft");
            String hour =
                    moment.at() == null ? "" : ", " + UsDates.hour(moment.at().toLocalTime());
            ListItem item = new ListItem(day, new Span(moment.words() + hour));
            item.addClassName(
                    moment.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
            line.add(item);
        }
        return line;
    }

    private static Component homes(List<CaseAddress> homes) {
        PlainTable table =
                new PlainTable("Addresses with precinct and ballot style", "Address", "Precinct", "Ballot style");
        for (CaseAddress home : homes) {
            table.row(Stream.of(
                            new Span(home.address() + " (" + home.which() + ")"),
                            numbers(home.precinct()),
                            numbers(home.style()))
                    .map(cell -> (Component) cell)
                    .toList());
        }
        return table;
    }

    private static Span numbers(String digits) {
        Span span = new Span(digits);
        if (digits.matches("[0-9A-Z, ]*")) {
            span.addClassName("num");
        }
        return span;
    }

    private static Component other(EnvelopeCase other) {
        EnvelopeNumber number = other.key().envelopeNo();
        Paragraph line = new Paragraph(new Span("Another envelope of this voter: "));
        line.addClassName("warn");
        line.add(
                Links.link(number.value(), "review/case/" + number),
                new Span(other.countedPerson() == null ? ", " + other.state().spoken() + "." : ", and it counts."));
        return line;
    }

    private static Component order(CaseFile file, RecordedCourtOrder recorded) {
        CourtOrder order = recorded.order();
        Div warn = new Div(
                new H3("Court order: " + DateWords.code(order.kind().code())),
                new Paragraph(order.court() + ", " + UsDates.digits(order.date())
                        + (recorded.source().isEmpty() ? "" : ", " + recorded.source()) + ": " + order.scope() + " ("
                        + DateWords.code(order.standing().code()) + ")"));
        file.around().pictures().orders().stream()
                .filter(scan -> scan.orderNo() == recorded.orderNo())
                .forEach(scan -> {
                    Anchor link = new Anchor(
                            "/set-up/orders/" + file.now().key().electionId() + "/" + scan.orderNo() + "/"
                                    + scan.number(),
                            scan.words());
                    link.setRouterIgnore(true);
                    warn.add(new Paragraph(link));
                });
        warn.addClassName("warn");
        return warn;
    }
}
