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
import org.proviso.intake.cure.CureService;
import org.proviso.intake.desk.CureLookupService;
import org.proviso.intake.desk.FoundEnvelope;
import org.proviso.ui.Links;
import org.proviso.ui.PageHead;
import org.proviso.ui.PlainTable;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.TypedField;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** What a voter brought after casting a ballot: the envelope is found, then what came in is recorded with its stamp. */
@Route(value = "intake/cure", layout = OfficeFrame.class)
@PageTitle("What a voter brought · Proviso")
@PermitAll
public final class CureView extends Composite<Div> {

    private static final int SHOWN = 10;

    private final transient CureLookupService desk;
    private final String election;
    private final Div found = new Div();
    private final CureForm form;

    CureView(CureLookupService desk, CureService cures, WorkingElection workplace) {
        this.desk = desk;
        this.election = workplace.electionId();
        form = new CureForm(cures, desk, workplace);
        TypedField sought = new TypedField("sought", "Find the envelope");
        sought.onTyped(this::find);
        Div left = new Div(new H2("Whose envelope"), sought, found);
        Div bench = new Div(left, form);
        form.addClassName("side");
        bench.addClassName("bench");
        getContent().addClassNames("sheet", "intake", "cure");
        getContent()
                .add(
                        new PageHead(
                                        "What a voter brought",
                                        "The stamp of its arrival decides whether it is in time, never the day it is"
                                                + " keyed.")
                                .beside(Links.link("To Intake", "intake")),
                        bench);
        find("");
        sought.focus();
    }

    private void find(String text) {
        found.removeAll();
        if (text.isEmpty()) {
            found.add(new Paragraph(
                    "Type the envelope number, the voter's receipt number, or how the last name begins."));
            return;
        }
        List<FoundEnvelope> all = desk.find(election, text, SHOWN);
        if (all.isEmpty()) {
            found.add(new Paragraph("No envelope of this election has such a number, and no voter such a name."));
            return;
        }
        PlainTable table = new PlainTable("Envelopes found", "Envelope", "Receipt", "Voter", "Cast at", "");
        for (FoundEnvelope one : all) {
            ActButton take = new ActButton("This one").quiet().does(() -> take(one));
            take.setAriaLabel("This one: " + one.envelopeNo());
            table.row(List.of(
                    number(one.envelopeNo()),
                    number(one.receiptNo()),
                    new Span(one.voter()),
                    new Span(one.votingLocation()),
                    take));
        }
        found.add(table);
        if (all.size() == 1) {
            form.of(all.get(0));
        }
    }

    private void take(FoundEnvelope one) {
        form.of(one);
        form.begin();
    }

    private static Span number(String text) {
        Span number = new Span(text);
        number.addClassName("num");
        return number;
    }
}
