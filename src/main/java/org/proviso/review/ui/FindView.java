package org.proviso.review.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.List;
import java.util.function.Function;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.review.find.FindResult;
import org.proviso.review.find.FindService;
import org.proviso.review.ui.list.OutlookMark;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.PageHead;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** The results of a search: envelopes, and voters with their envelopes. */
@Route(value = "find", layout = OfficeFrame.class)
@PageTitle("Find \u00B7 Proviso")
@PermitAll
class FindView extends Composite<Div> implements BeforeEnterObserver {

    private final FindService find;
    private final WorkingElection workplace;

    FindView(FindService find, WorkingElection workplace) {
        this.find = find;
        this.workplace = workplace;
        getContent().addClassName("sheet");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        String typed = event.getLocation()
                .getQueryParameters()
                .getSingleParameter("for")
                .orElse("");
        getContent().removeAll();
        if (find.isReadingRoll()) {
            getContent()
                    .add(
                            new PageHead("Find", "Loading the roll."),
                            new Paragraph(
                                    "Voters can be looked up once it is loaded. A million voters take a few seconds."
                                            + " Then reload this page."));
            return;
        }
        FindResult found = find.find(workplace.electionId(), typed);
        getContent().add(new PageHead("Find", lead(typed, found)));
        caution(typed);
        show(typed, found);
    }

    /** What a search cannot see: rows of the roll that could not be read. */
    private void caution(String typed) {
        String unread = typed.isBlank()
                ? ""
                : find.unread(workplace.electionId(), typed).words();
        if (!unread.isEmpty()) {
            Paragraph caution = new Paragraph(unread);
            caution.addClassName("warn");
            getContent().add(caution);
        }
    }

    private void show(String typed, FindResult found) {
        if (!found.envelopes().isEmpty()) {
            getContent()
                    .add(
                            new H2("Envelopes"),
                            envelopes(found.envelopes()),
                            file("Envelopes", typed, now -> envelopes(now.envelopes())));
        }
        if (!found.voters().isEmpty()) {
            getContent()
                    .add(new H2("Voters"), voters(found.voters()), file("Voters", typed, now -> voters(now.voters())));
        }
        if (found.isNothing()) {
            getContent()
                    .add(new Paragraph(
                            "Find an envelope by its envelope number, receipt number or the name on it. Find a"
                                    + " voter by name (\u201CVoss, Katherine\u201D), birth date (03/12/1984), address (1204 Quarry)"
                                    + " or the beginning of a voter ID."));
        }
    }

    private DownloadLinks file(String title, String typed, Function<FindResult, PlainTable> table) {
        ElectionId election = workplace.electionId();
        return DownloadLinks.of(title, election, () -> table.apply(find.find(election, typed)))
                .narrowed(() -> "Find: " + typed);
    }

    private static String lead(String typed, FindResult found) {
        if (found.isNothing()) {
            return typed.isBlank() ? "" : "No matches for \u201C" + typed + "\u201D.";
        }
        boolean many =
                found.envelopes().size() == FindService.MOST || found.voters().size() == FindService.MOST;
        return "For \u201C" + typed + "\u201D: "
                + UsDates.count(found.envelopes().size(), "envelope") + ", "
                + UsDates.count(found.voters().size(), "voter") + "."
                + (many ? " Only the first matches are shown. Add the first name to narrow the search." : "");
    }

    private static PlainTable envelopes(List<FindResult.EnvelopeHit> envelopes) {
        PlainTable table = new PlainTable(
                "Envelopes",
                "Envelope",
                "Receipt",
                "Name on it",
                "Reason issued",
                "Voting location",
                "Precinct",
                "Outlook",
                "State");
        for (FindResult.EnvelopeHit hit : envelopes) {
            table.row(List.<Component>of(
                    number(hit.envelopeNo()),
                    new Span(ReceiptNumber.text(hit.receiptNo())),
                    new Span(hit.name().listed()),
                    new Span(DateWords.code(hit.reasons().replace(";", ", "))),
                    new Span(hit.votingLocation().isEmpty() ? "by mail" : hit.votingLocation()),
                    new Span(hit.precinct()),
                    hit.state().isOver() ? new Span() : OutlookMark.of(hit.outlook()),
                    new Span(hit.state().spoken() + (hit.holder().isEmpty() ? "" : ", " + hit.holder()))));
        }
        return table;
    }

    private static PlainTable voters(List<FindResult.VoterHit> voters) {
        PlainTable table = new PlainTable("Voters", "Voter", "Voter ID", "Date of birth", "Address", "Envelopes");
        for (FindResult.VoterHit hit : voters) {
            Voter voter = hit.voter();
            Div numbers = new Div();
            hit.envelopeNos().forEach(number -> numbers.add(number(number), new Span(" ")));
            if (hit.envelopeNos().isEmpty()) {
                numbers.add(new Span("none"));
            }
            table.row(List.<Component>of(
                    new Span(voter.name().listed() + (hit.byFormerName() ? ", formerly " + voter.formerName() : "")),
                    new Span(voter.voterId().value()),
                    new Span(UsDates.digits(voter.birthDate())),
                    new Span(
                            voter.confidential()
                                    ? "protected address"
                                    : voter.residence().address().oneLine()),
                    numbers));
        }
        return table;
    }

    private static Component number(EnvelopeNumber envelopeNo) {
        return Links.link(envelopeNo.value(), "review/case/" + envelopeNo);
    }
}
