package org.proviso.review.ui.ends;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextArea;
import org.proviso.core.EnvelopeNumber;
import org.proviso.review.acts.AdministrativeEndService;
import org.proviso.review.file.EndOfCase;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ActDialog;

/** The foot of a case for whoever confirms that it ends without a decision, or sends the proposal back. */
public final class EndReviewFoot extends Div {

    private final EnvelopeNumber number;
    private final AdministrativeEndService ends;
    private final EndActs acts;

    public EndReviewFoot(EndOfCase.Proposed proposed, AdministrativeEndService ends, EndActs acts) {
        this.number = proposed.proposal().key().envelopeNo();
        this.ends = ends;
        this.acts = acts;
        addClassName("case-foot");
        Div mark = new Div(new Span("Proposed: " + proposed.proposal().words()));
        mark.addClassName("verdict");
        Div why = new Div(new Span("Proposed by " + proposed.by() + " on " + UsDates.near(proposed.at()) + ": "
                + ProposeEndSheet.words(proposed.proposal().reasons()) + ". Legal reference: "
                + proposed.proposal().legalReference() + "."));
        why.addClassNames("soft", "small");
        Div caution = new Div(new Span("People decide; local law governs."));
        caution.addClassNames("soft", "small");
        Div buttons = new Div();
        buttons.addClassName("acts");
        if (proposed.yours()) {
            buttons.add(new Span("You proposed this. A different reviewer confirms it."));
        } else {
            buttons.add(
                    new ActButton("Send back with a note", "B").does(this::askNote),
                    new ActButton(proposed.proposal().sendsOn() ? "Confirm: send on" : "Confirm: close", "A")
                            .first()
                            .does(() -> askToConfirm(proposed)));
        }
        add(new Div(mark, why, caution), buttons);
    }

    private void askNote() {
        TextArea note = EndFields.area("Note for the proposer");
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog(
                "Send back: envelope " + number,
                "Send back",
                () -> acts.run(
                        sheet[0]::refuse,
                        "Envelope " + number + ": sent back to the reviewers.",
                        seen -> ends.sendBack(seen.key(), seen.version(), note.getValue())));
        sheet[0].with(note).open();
    }

    private void askToConfirm(EndOfCase.Proposed proposed) {
        boolean sendsOn = proposed.proposal().sendsOn();
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog(
                "Confirm: envelope " + number,
                "Confirm",
                () -> acts.run(
                        sheet[0]::refuse,
                        "Envelope " + number
                                + (sendsOn
                                        ? ": sent on to " + proposed.proposal().toCounty() + "."
                                        : ": closed without a decision."),
                        seen -> ends.confirm(seen.key(), seen.version())));
        sheet[0].with(
                        sendsOn
                                ? "Confirm that you read the case yourself. The envelope then goes to "
                                        + proposed.proposal().toCounty() + " with the form."
                                : "Confirm that you read the case yourself. The case is then closed without a decision.")
                .open();
    }
}
