package org.proviso.release.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.grid.Grid;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.access.AccessService;
import org.proviso.access.Act;
import org.proviso.core.deciding.Refusal;
import org.proviso.release.Batch;
import org.proviso.release.Release;
import org.proviso.release.ReleaseService;
import org.proviso.release.ToOpen;
import org.proviso.ui.ActButton;
import org.proviso.ui.Asking;
import org.proviso.ui.Links;
import org.proviso.ui.OfficeFrame;
import org.proviso.ui.OutcomeMark;
import org.proviso.ui.PageHead;
import org.proviso.ui.PlainTable;
import org.proviso.ui.RowGrid;
import org.proviso.ui.Said;
import org.proviso.ui.UsDates;
import org.proviso.ui.Workplace;

/** Envelopes to open, whether they may be opened yet, and the batches so far. */
@Route(value = "release", layout = OfficeFrame.class)
@PageTitle("Release · Proviso")
@PermitAll
public final class ReleaseView extends Composite<Div> {

    private final transient ReleaseService releases;
    private final transient AccessService access;
    private final String election;

    ReleaseView(ReleaseService releases, AccessService access, Workplace workplace) {
        this.releases = releases;
        this.access = access;
        this.election = workplace.electionId();
        if (!access.may(Act.SET_GATES)) {
            access.demand(Act.OPEN_ENVELOPES);
        }
        getContent().addClassNames("sheet", "board", "release");
        show();
    }

    private void show() {
        getContent().removeAll();
        String gate = releases.gate(election).map(Refusal::words).orElse("Envelopes that count may be opened.");
        PageHead head = new PageHead("Release", gate);
        if (access.may(Act.SET_GATES) && !releases.areOthersDone(election)) {
            head.beside(new ActButton("Mail and in-person counting complete…").does(this::askOthers));
        }
        getContent().add(head, waiting(), batches());
    }

    private void askOthers() {
        Asking sheet = new Asking("Mail and in-person counting complete?", "Record as complete", () -> {
            releases.othersDone(election);
            show();
            Said.done("Recorded: mail and in-person counting is complete.");
            return true;
        });
        sheet.with(
                        "Your statement that mail and in-person counting is complete is recorded with your name. This cannot be"
                                + " undone.")
                .open();
    }

    private Component waiting() {
        List<ToOpen> waiting = releases.waiting(election);
        Div part = new Div(new H2("Envelopes to open"));
        if (waiting.isEmpty()) {
            part.add(
                    new Paragraph(
                            "No envelopes to open. An envelope appears here after the decision that it counts, in full or in part."));
            return part;
        }
        RowGrid<ToOpen> grid = grid(waiting);
        boolean team = access.may(Act.OPEN_ENVELOPES);
        grid.setSelectionMode(team ? Grid.SelectionMode.MULTI : Grid.SelectionMode.NONE);
        part.add(
                new Paragraph(
                        UsDates.count(waiting.size(), "envelope")
                                + " decided to count and not in a batch. Put many in one batch: in a small batch a ballot might be traced to its voter."));
        if (team) {
            grid.asMultiSelect().select(regular(waiting));
            part.add(new ActButton("Make a batch…").first().does(() -> askBatch(grid.getSelectedItems())));
        }
        part.add(grid);
        return part;
    }

    private static List<ToOpen> regular(List<ToOpen> waiting) {
        return waiting.stream()
                .filter(one -> !one.decision().ballot().heldApart())
                .toList();
    }

    private static RowGrid<ToOpen> grid(List<ToOpen> waiting) {
        RowGrid<ToOpen> grid = new RowGrid<>("Envelopes to open", "No envelopes to open.");
        grid.number("Envelope", "9rem", one -> one.key().envelopeNo());
        grid.addComponentColumn(one -> new OutcomeMark(
                        OutcomeMark.Shape.valueOf(one.decision().as().name()),
                        sentence(one.decision().as().words())))
                .setHeader("Decided");
        grid.words(
                "Kept apart", "14rem", one -> one.decision().ballot().heldApart() ? "yes, court-extended hours" : "");
        grid.setItems(waiting);
        grid.setHeight("20rem");
        return grid;
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private void askBatch(Set<ToOpen> chosen) {
        if (chosen.isEmpty()) {
            Said.refused("Select the envelopes to open together.");
            return;
        }
        TextField alone = new TextField("Why this envelope cannot wait for others");
        alone.setWidthFull();
        alone.setMaxLength(1000);
        alone.setVisible(chosen.size() == 1);
        Asking[] sheet = new Asking[1];
        sheet[0] = new Asking("Make a batch", "Make batch", () -> make(sheet[0], chosen, alone.getValue()));
        sheet[0].with(UsDates.count(chosen.size(), "envelope")
                        + " will be opened together. No record is kept of which ballot came from which envelope.")
                .with(alone)
                .open();
    }

    private boolean make(Asking sheet, Set<ToOpen> chosen, String alone) {
        Set<String> numbers = chosen.stream().map(one -> one.key().envelopeNo()).collect(Collectors.toSet());
        Release made = releases.make(election, numbers, alone);
        if (made instanceof Release.Refused refused) {
            return sheet.refuse(refused.refusal().words());
        }
        show();
        Said.done("Batch " + ((Release.Done) made).batch().number() + " made.");
        return true;
    }

    private Component batches() {
        List<Batch> all = releases.batches(election);
        Div part = new Div(new H2("Batches"));
        if (all.isEmpty()) {
            part.add(new Paragraph("No batches yet."));
            return part;
        }
        PlainTable table = new PlainTable("Batches", "Batch", "Envelopes", "State");
        all.forEach(batch -> table.row(List.of(
                Links.link("Batch " + batch.number(), "release/batch/" + batch.number()),
                new Span(batch.envelopes() + (batch.heldApart() ? ", kept apart" : "")),
                new Span(state(batch)))));
        part.add(table);
        return part;
    }

    private static String state(Batch batch) {
        if (batch.handedOffAt() != null) {
            return UsDates.count(batch.ballots(), "ballot") + " handed off";
        }
        if (batch.openedAt() != null) {
            return "open, " + UsDates.count(batch.ballots(), "ballot") + ", " + batch.empty() + " empty";
        }
        return batch.firstOpener() == null ? "sealed" : "being opened";
    }
}
