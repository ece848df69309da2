package org.proviso.review.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.time.LocalDateTime;
import java.util.List;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.acts.ResearchService;
import org.proviso.review.acts.ResearchService.WaitingRequest;
import org.proviso.ui.Links;
import org.proviso.ui.MessageLine;
import org.proviso.ui.PageHead;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ActDialog;
import org.proviso.ui.frame.ElectionLine;
import org.proviso.ui.frame.NoElectionException;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;
import org.springframework.dao.OptimisticLockingFailureException;

/** Research that waits for an answer: of whom it was asked, since when, and recording what came back. */
@Route(value = "review/research", layout = OfficeFrame.class)
@PageTitle("Research \u00B7 Proviso")
@PermitAll
class ResearchView extends Composite<Div> {

    private final transient ResearchService research;
    private final transient ElectionLine election;

    ResearchView(ResearchService research, WorkingElection workplace) {
        this.research = research;
        this.election = workplace.election().orElseThrow(NoElectionException::new);
        getContent().addClassName("sheet");
        show();
    }

    private void show() {
        List<WaitingRequest> waiting = research.waiting(election.id());
        getContent().removeAll();
        getContent().add(new PageHead("Research", lead(waiting)), new ReviewNavigation());
        if (waiting.isEmpty()) {
            getContent().add(new Paragraph("Request research from the page of a case. It waits here for its result."));
            return;
        }
        PlainTable table =
                new PlainTable("Research without a result", "Envelope", "Asked of", "Question", "Requested", "");
        waiting.forEach(request -> table.row(List.of(
                number(request.key().envelopeNo()),
                new Span(request.addressee().isEmpty() ? "Not stated" : request.addressee()),
                new Span(request.asked()),
                new Span(moment(request) + " by " + request.askedBy()),
                button(request))));
        getContent().add(table);
    }

    private static String lead(List<WaitingRequest> waiting) {
        return waiting.isEmpty()
                ? "No research is waiting for a result."
                : UsDates.count(waiting.size(), "request") + (waiting.size() == 1 ? " waits" : " wait")
                        + " for a result, the oldest first.";
    }

    private String moment(WaitingRequest request) {
        return UsDates.near(LocalDateTime.ofInstant(request.askedAt(), election.zone()));
    }

    private static Anchor number(EnvelopeNumber number) {
        Anchor link = Links.link(number.value(), "review/case/" + number);
        link.addClassName("num");
        return link;
    }

    private ActButton button(WaitingRequest request) {
        ActButton button = new ActButton("Record research result").quiet().does(() -> ask(request));
        button.setAriaLabel(
                "Record research result for envelope " + request.key().envelopeNo());
        return button;
    }

    private void ask(WaitingRequest request) {
        TextArea found = new TextArea("Result");
        found.setWidthFull();
        found.setMaxLength(4_000);
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog("Research result", "Record result", () -> record(sheet[0], request, found.getValue()));
        sheet[0].with("Envelope " + request.key().envelopeNo() + ". Requested: " + request.asked())
                .with(found)
                .open();
    }

    private boolean record(ActDialog sheet, WaitingRequest request, String found) {
        ActResult<EnvelopeCase> recorded;
        try {
            recorded = research.recordAnswer(request.key(), request.number(), request.version(), found);
        } catch (OptimisticLockingFailureException e) {
            return sheet.refuse("Not saved. " + e.getMessage());
        }
        if (recorded instanceof ActResult.Refused<EnvelopeCase> refused) {
            return sheet.refuse(refused.words());
        }
        show();
        MessageLine.done("Result recorded on envelope " + request.key().envelopeNo() + ".");
        return true;
    }
}
