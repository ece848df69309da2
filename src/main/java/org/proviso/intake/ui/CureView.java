package org.proviso.intake.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.List;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.ReceiptNumber;
import org.proviso.intake.cure.CureScanService;
import org.proviso.intake.cure.CureService;
import org.proviso.intake.desk.CureLookupService;
import org.proviso.intake.desk.FoundEnvelope;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.PageHead;
import org.proviso.ui.PlainTable;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.TypedField;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** What a voter brought after casting a ballot: the envelope is found, then what came in is recorded with its stamp. */
@Route(value = "intake/cure", layout = OfficeFrame.class)
@PageTitle("Cure evidence · Proviso")
@PermitAll
public final class CureView extends Composite<Div> {

    private static final int SHOWN = 10;

    private final transient CureLookupService desk;
    private final ElectionId election;
    private final Div found = new Div();
    private final CureForm form;

    CureView(
            CureLookupService desk,
            CureService cures,
            CureScanService scans,
            AccessService access,
            WorkingElection workplace) {
        access.demand(Permission.RECORD_CURE_EVIDENCE);
        this.desk = desk;
        this.election = workplace.electionId();
        form = new CureForm(cures, desk, scans, workplace);
        TypedField sought = new TypedField("sought", "Envelope, receipt or last name");
        sought.onTyped(this::find);
        Div left = new Div(new H2("Find the envelope"), sought, found);
        Div bench = new Div(left, form);
        form.addClassName("side");
        bench.addClassName("bench");
        getContent().addClassNames("sheet", "intake", "cure");
        getContent()
                .add(
                        new PageHead(
                                        "Record cure evidence",
                                        "The date and time stamped on arrival decide whether evidence is on time, not the day it"
                                                + " is keyed.")
                                .beside(Links.link("Back to Intake", "intake")),
                        bench);
        find("");
        sought.focus();
    }

    private void find(String text) {
        found.removeAll();
        if (text.isEmpty()) {
            found.add(new Paragraph(
                    "Enter the envelope number, the receipt number or the beginning of the voter's last name."));
            return;
        }
        List<FoundEnvelope> all = desk.find(election, text, SHOWN);
        if (all.isEmpty()) {
            found.add(new Paragraph("No envelope in this election matches that number or name."));
            return;
        }
        found.add(
                table(all),
                DownloadLinks.of("Envelopes found", election, () -> table(desk.find(election, text, SHOWN)))
                        .narrowed(() -> "Find: " + text));
        if (all.size() == 1) {
            form.of(all.get(0));
        }
    }

    private PlainTable table(List<FoundEnvelope> all) {
        PlainTable table = new PlainTable("Envelopes found", "Envelope", "Receipt", "Voter", "Voting location", "");
        for (FoundEnvelope foundEnvelope : all) {
            ActButton take = new ActButton("Select").quiet().does(() -> take(foundEnvelope));
            take.setAriaLabel("Select envelope " + foundEnvelope.envelopeNo());
            table.row(List.of(
                    number(foundEnvelope.envelopeNo().value()),
                    number(ReceiptNumber.text(foundEnvelope.receiptNo())),
                    new Span(foundEnvelope.voter()),
                    new Span(foundEnvelope.votingLocation()),
                    take));
        }
        return table;
    }

    private void take(FoundEnvelope foundEnvelope) {
        form.of(foundEnvelope);
        form.begin();
    }

    private static Span number(String text) {
        Span number = new Span(text);
        number.addClassName("num");
        return number;
    }
}
