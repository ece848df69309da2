package org.proviso.intake.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.intake.ReceivingService;
import org.proviso.intake.desk.EnvelopeListService;
import org.proviso.intake.desk.IntakeEnvelopeRow;
import org.proviso.ui.Links;
import org.proviso.ui.PageHead;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** Receiving envelopes out of a bag, one after the other, typed or scanned. */
@Route(value = "intake/receive", layout = OfficeFrame.class)
@PageTitle("Receive envelopes · Proviso")
@PermitAll
public final class ReceiveView extends Composite<Div> {

    private static final int SHOWN = 12;

    private final transient EnvelopeListService lists;
    private final ElectionId election;
    private final Div last = new Div();

    ReceiveView(ReceivingService receiving, EnvelopeListService lists, WorkingElection workplace) {
        this.lists = lists;
        this.election = workplace.electionId();
        ReceiveForm form = new ReceiveForm(receiving, lists, workplace, receiving.election(election));
        form.after(this::showLast);
        last.addClassName("side");
        Div bench = new Div(form, last);
        bench.addClassName("bench");
        getContent().addClassNames("sheet", "intake", "receiving");
        getContent()
                .add(
                        new PageHead(
                                        "Receive envelopes",
                                        "Scan or type. Enter moves to the next field; after the receipt number it receives the envelope."
                                                + " The bag's fields stay filled in.")
                                .beside(Links.link("Back to Intake", "intake")),
                        bench);
        showLast();
        form.focusFirst();
    }

    private void showLast() {
        last.removeAll();
        last.add(new H2("Last received"));
        List<IntakeEnvelopeRow> lines = lists.lastReceived(election, SHOWN);
        if (lines.isEmpty()) {
            last.add(new Paragraph("No envelopes entered by hand yet."));
            return;
        }
        PlainTable table = new PlainTable("Envelopes last received", "Envelope", "Stamped", "Keying");
        lines.forEach(line -> table.row(List.of(
                Links.link(line.envelopeNo().value(), "intake/key/" + line.envelopeNo()),
                new com.vaadin.flow.component.html.Span(
                        line.receivedAt() == null ? "" : UsDates.near(line.receivedAt())),
                new com.vaadin.flow.component.html.Span(line.keyed()))));
        last.add(table);
    }
}
