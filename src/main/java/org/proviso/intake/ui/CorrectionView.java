package org.proviso.intake.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.List;
import org.proviso.intake.ReceivingService;
import org.proviso.intake.correction.CorrectableEnvelope;
import org.proviso.intake.correction.EnvelopeCorrection;
import org.proviso.intake.correction.EnvelopeCorrectionService;
import org.proviso.ui.AddressedEnvelope;
import org.proviso.ui.Links;
import org.proviso.ui.MessageLine;
import org.proviso.ui.PageHead;
import org.proviso.ui.PlainTable;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** Correcting what was received and keyed of one envelope, with the corrections made so far. */
@Route(value = "intake/correct", layout = OfficeFrame.class)
@PermitAll
public final class CorrectionView extends Composite<Div> implements HasUrlParameter<String>, HasDynamicTitle {

    private final transient EnvelopeCorrectionService corrections;
    private final transient ReceivingService receiving;
    private final transient WorkingElection workplace;
    private String title = "an envelope";

    CorrectionView(EnvelopeCorrectionService corrections, ReceivingService receiving, WorkingElection workplace) {
        this.corrections = corrections;
        this.receiving = receiving;
        this.workplace = workplace;
        getContent().addClassNames("sheet", "intake");
    }

    @Override
    public void setParameter(BeforeEvent event, String number) {
        title = number;
        CorrectableEnvelope seen = corrections
                .find(workplace.electionId(), AddressedEnvelope.number(number))
                .orElseThrow(() -> AddressedEnvelope.missing(number));
        CorrectionForm form = new CorrectionForm(
                corrections, workplace, receiving.choices(workplace.electionId()), seen, () -> again(number));
        form.addClassName("desk");
        Div side = new Div();
        side.addClassName("side");
        before(side, seen.corrections());
        Div bench = new Div(form, side);
        bench.addClassName("bench");
        getContent().removeAll();
        getContent()
                .add(
                        new PageHead("Correct " + number, lead(seen))
                                .beside(Links.link("Back to Intake", "intake"), form.saving()),
                        bench);
    }

    @Override
    public String getPageTitle() {
        return "Correct " + title + " · Proviso";
    }

    private static String lead(CorrectableEnvelope seen) {
        if (!seen.inTheWay().isEmpty()) {
            return seen.inTheWay();
        }
        return seen.keyed().isEmpty()
                ? "Correct what was received. The rest is still to be keyed."
                : "Change what is wrong, and say why. The case is then assessed anew. Ctrl+Enter: save.";
    }

    private static void before(Div side, List<EnvelopeCorrection> corrections) {
        side.add(new H2("Corrections so far"));
        if (corrections.isEmpty()) {
            side.add(new Paragraph("None."));
        }
        for (EnvelopeCorrection correction : corrections) {
            PlainTable table = new PlainTable("Correction " + correction.number(), "Field", "Before", "After");
            correction
                    .became()
                    .forEach((box, after) -> table.row(List.of(
                            new Span(box.replace('_', ' ')),
                            new Span(correction.was().getOrDefault(box, "")),
                            new Span(after))));
            side.add(table, new Paragraph("By " + correction.by() + ": " + correction.because()));
        }
    }

    private static void again(String number) {
        UI.getCurrent().refreshCurrentRoute(false);
        MessageLine.done("Envelope " + number + " corrected. Its case was assessed anew.");
    }
}
