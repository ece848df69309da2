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
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.release.Batch;
import org.proviso.release.EnvelopeToOpen;
import org.proviso.release.KeptClosed;
import org.proviso.release.ReleaseService;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.MessageLine;
import org.proviso.ui.OutcomeMark;
import org.proviso.ui.PageHead;
import org.proviso.ui.PlainTable;
import org.proviso.ui.ReasonDialog;
import org.proviso.ui.RowGrid;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ActDialog;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** Envelopes to open, whether they may be opened yet, and the batches so far. */
@Route(value = "release", layout = OfficeFrame.class)
@PageTitle("Release · Proviso")
@PermitAll
public final class ReleaseView extends Composite<Div> {

    private final transient ReleaseService releases;
    private final transient AccessService access;
    private final ElectionId election;

    ReleaseView(ReleaseService releases, AccessService access, WorkingElection workplace) {
        this.releases = releases;
        this.access = access;
        this.election = workplace.electionId();
        access.demand(Permission.SEE_RELEASE);
        getContent().addClassNames("sheet", "board", "release");
        show();
    }

    private void show() {
        getContent().removeAll();
        String gate = releases.gate(election).map(Refusal::words).orElse("Envelopes that count may be opened.");
        PageHead head = new PageHead("Release", gate);
        if (access.isPermitted(Permission.SET_GATES) && !releases.areOtherBallotsComplete(election)) {
            head.beside(new ActButton("Mail and in-person counting complete…").does(this::askOthers));
        }
        if (access.isPermitted(Permission.SET_GATES) && releases.areOtherBallotsComplete(election)) {
            head.beside(
                    new ActButton("Take back \"counting complete\"…").quiet().does(this::takeBackOthers));
        }
        getContent().add(head, waiting());
        keptClosed().ifPresent(getContent()::add);
        getContent().add(batches());
    }

    private void takeBackOthers() {
        new ReasonDialog(
                        "Mail and in-person counting is not complete?",
                        "Take back",
                        because -> releases.takeBackOtherBallotsComplete(election, because),
                        "Taken back: mail and in-person counting is not complete.",
                        this::show)
                .ask(
                        "It was recorded too early. Where the rules open provisional envelopes last, none is opened until it"
                                + " is recorded again.");
    }

    private void askOthers() {
        ActDialog sheet = new ActDialog("Mail and in-person counting complete?", "Record as complete", () -> {
            ActResult<ElectionId> recorded = releases.recordOtherBallotsComplete(election);
            show();
            if (recorded instanceof ActResult.Refused<ElectionId> refused) {
                MessageLine.refused(refused.words());
            } else {
                MessageLine.done("Recorded: mail and in-person counting is complete.");
            }
            return true;
        });
        sheet.with("Your statement that mail and in-person counting is complete is recorded with your name. It can be"
                        + " taken back until the first batch is begun to open.")
                .open();
    }

    private Component waiting() {
        List<EnvelopeToOpen> waiting = releases.waiting(election);
        Div part = new Div(new H2("Envelopes to open"));
        if (waiting.isEmpty()) {
            part.add(
                    new Paragraph(
                            "No envelopes to open. An envelope appears here after the decision that it counts, in full or in part."));
            return part;
        }
        RowGrid<EnvelopeToOpen> grid = grid(waiting);
        boolean team = access.isPermitted(Permission.OPEN_ENVELOPES);
        grid.setSelectionMode(team ? Grid.SelectionMode.MULTI : Grid.SelectionMode.NONE);
        part.add(
                new Paragraph(
                        UsDates.count(waiting.size(), "envelope")
                                + " decided to count and not in a batch. Put many in one batch: in a small batch a ballot might be traced to its voter."));
        if (team) {
            grid.asMultiSelect().select(regular(waiting));
            part.add(new ActButton("Make a batch…").first().does(() -> askBatch(grid.getSelectedItems())));
        }
        part.add(
                grid,
                DownloadLinks.of(
                        "Envelopes to open", election, () -> waitingNow().listed()));
        return part;
    }

    private RowGrid<EnvelopeToOpen> waitingNow() {
        access.demand(Permission.SEE_RELEASE);
        return grid(releases.waiting(election));
    }

    private static List<EnvelopeToOpen> regular(List<EnvelopeToOpen> waiting) {
        return waiting.stream()
                .filter(envelope -> !envelope.decision().ballot().heldApart())
                .toList();
    }

    /** Nobody should look for an envelope that is decided to count and not among those to open. */
    private Optional<Component> keptClosed() {
        List<KeptClosed> closed = releases.keptClosed(election);
        if (closed.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Div(
                new H2("Kept closed for now"),
                new Paragraph(UsDates.count(closed.size(), "envelope")
                        + " decided to count that must not be opened yet. They join no batch."),
                kept(closed),
                DownloadLinks.of("Kept closed for now", election, () -> kept(releases.keptClosed(election)))));
    }

    private static PlainTable kept(List<KeptClosed> closed) {
        PlainTable table = new PlainTable("Kept closed for now", "Envelope", "Why, and who does what");
        closed.forEach(envelope -> table.row(envelope.key().envelopeNo().value(), envelope.because()));
        return table;
    }

    private static RowGrid<EnvelopeToOpen> grid(List<EnvelopeToOpen> waiting) {
        RowGrid<EnvelopeToOpen> grid = new RowGrid<>("Envelopes to open", "No envelopes to open.");
        grid.number("Envelope", "9rem", envelope -> envelope.key().envelopeNo().value());
        grid.addComponentColumn(envelope -> new OutcomeMark(
                        OutcomeMark.Shape.valueOf(envelope.decision().as().name()),
                        sentence(envelope.decision().as().words())))
                .setHeader("Decided");
        grid.words(
                "Kept apart",
                "14rem",
                envelope -> envelope.decision().ballot().heldApart() ? "yes, court-extended hours" : "");
        grid.setItems(waiting);
        grid.setHeight("20rem");
        return grid;
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private void askBatch(Set<EnvelopeToOpen> chosen) {
        if (chosen.isEmpty()) {
            MessageLine.refused("Select the envelopes to open together.");
            return;
        }
        TextField alone = new TextField("Why this envelope cannot wait for others");
        alone.setWidthFull();
        alone.setMaxLength(1000);
        alone.setVisible(chosen.size() == 1);
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog("Make a batch", "Make batch", () -> make(sheet[0], chosen, alone.getValue()));
        sheet[0].with(UsDates.count(chosen.size(), "envelope")
                        + " will be opened together. No record is kept of which ballot came from which envelope.")
                .with(alone)
                .open();
    }

    private boolean make(ActDialog sheet, Set<EnvelopeToOpen> chosen, String alone) {
        Set<EnvelopeNumber> numbers =
                chosen.stream().map(envelope -> envelope.key().envelopeNo()).collect(Collectors.toSet());
        ActResult<Batch> made = releases.makeBatch(election, numbers, alone);
        if (made instanceof ActResult.Refused<Batch> refused) {
            return sheet.refuse(refused.words());
        }
        show();
        made.ifAccepted().ifPresent(batch -> MessageLine.done("Batch " + batch.number() + " made."));
        return true;
    }

    private Component batches() {
        List<Batch> all = releases.batches(election);
        Div part = new Div(new H2("Batches"));
        if (all.isEmpty()) {
            part.add(new Paragraph("No batches yet."));
            return part;
        }
        part.add(batches(all), DownloadLinks.of("Batches", election, () -> batches(releases.batches(election))));
        return part;
    }

    private static PlainTable batches(List<Batch> all) {
        PlainTable table = new PlainTable("Batches", "Batch", "Envelopes", "State");
        all.forEach(batch -> table.row(List.of(
                Links.link("Batch " + batch.number(), "release/batch/" + batch.number()),
                new Span(batch.envelopes() + (batch.heldApart() ? ", kept apart" : "")),
                new Span(state(batch)))));
        return table.figures("Envelopes");
    }

    private static String state(Batch batch) {
        if (batch.handedOffAt() != null) {
            return UsDates.count(batch.ballots(), "ballot") + " handed off";
        }
        if (batch.openedAt() != null) {
            return "open, " + UsDates.count(batch.ballots(), "ballot") + ", " + batch.empty() + " empty";
        }
        if (batch.dissolvedAt() != null) {
            return "dissolved";
        }
        if (batch.dissolveAskedBy() != null) {
            return "to be dissolved: a second team member decides";
        }
        return batch.firstOpener() == null ? "sealed" : "being opened";
    }
}
