package org.proviso.review.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.time.LocalDateTime;
import java.util.EnumSet;
import java.util.Set;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.acts.ResearchService;
import org.proviso.review.acts.ResearchService.WaitingRequest;
import org.proviso.review.facts.WaitsFor;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.MessageLine;
import org.proviso.ui.PageHead;
import org.proviso.ui.RowGrid;
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
    private final Select<WaitsFor> pile = new Select<>();
    private final PageHead head = new PageHead("Research", "");
    private final RowGrid<WaitingRequest> rows;

    ResearchView(ResearchService research, WorkingElection workplace) {
        this.research = research;
        this.election = workplace.election().orElseThrow(NoElectionException::new);
        this.rows = new RowGrid<>(
                "Research without a result",
                "No requests wait. Request research from the page of a case. It waits here for its result.");
        pile.setLabel("Waiting for");
        pile.setItems(WaitsFor.values());
        pile.setEmptySelectionAllowed(true);
        pile.setEmptySelectionCaption("Anyone");
        pile.setItemLabelGenerator(item -> item == null ? "Anyone" : item.words());
        pile.addValueChangeListener(event -> show());
        Div filters = new Div(pile);
        filters.addClassName("filters");
        columns();
        getContent().addClassNames("sheet", "queue");
        getContent()
                .add(
                        head,
                        new ReviewNavigation(),
                        filters,
                        rows,
                        DownloadLinks.of("Research", election.id(), rows).narrowed(this::narrowed));
        show();
    }

    private void columns() {
        rows.addComponentColumn(request -> number(request.key().envelopeNo()))
                .setHeader("Envelope")
                .setWidth("6.5rem")
                .setFlexGrow(0);
        rows.acts("Result");
        rows.words("Waiting for", "8rem", request -> request.waitsFor().words());
        rows.words("Asked of", "10rem", request -> request.addressee().isEmpty() ? "Not stated" : request.addressee());
        rows.words("Question", "18rem", WaitingRequest::asked);
        rows.words("Requested", "11rem", request -> moment(request) + ", " + request.askedBy());
        rows.addComponentColumn(this::button)
                .setKey("act")
                .setHeader("Result")
                .setWidth("12rem")
                .setFlexGrow(0);
    }

    private String narrowed() {
        WaitsFor one = pile.getValue();
        return one == null ? "" : "Waiting for: " + one.words();
    }

    private void show() {
        WaitsFor one = pile.getValue();
        Set<WaitsFor> shown = one == null ? EnumSet.allOf(WaitsFor.class) : EnumSet.of(one);
        int count = research.count(election.id(), shown);
        head.say(lead(count));
        rows.show((offset, limit) -> research.waiting(election.id(), shown, offset, limit), () -> count);
    }

    private static String lead(int count) {
        return count == 0
                ? "No research is waiting for a result."
                : UsDates.count(count, "request") + (count == 1 ? " waits" : " wait")
                        + " for a result, the oldest first. The queue has their cases as piles.";
    }

    private String moment(WaitingRequest request) {
        return UsDates.brief(LocalDateTime.ofInstant(request.askedAt(), election.zone()));
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
