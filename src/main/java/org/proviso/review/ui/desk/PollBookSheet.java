package org.proviso.review.ui.desk;

import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.TextArea;
import org.proviso.review.facts.PollBookSeen;
import org.proviso.ui.field.ActDialog;

/** Records what the poll book of another location shows. */
final class PollBookSheet extends CaseSheet {

    PollBookSheet(CasePageContext desk) {
        this(desk, new RadioButtonGroup<>("What the poll book shows"), words("Book, line and signature you saw"));
    }

    private PollBookSheet(CasePageContext desk, RadioButtonGroup<Boolean> signed, TextArea seen) {
        super("Record poll book check", "Record check", refusing -> {
            if (signed.getValue() == null) {
                return ActDialog.refuse(signed, "Choose whether the voter signed there.");
            }
            if (seen.getValue().isBlank()) {
                return missing(seen, "Required. Enter which book, which line and whose signature.");
            }
            return desk.fromSheet(
                    refusing,
                    "Envelope " + desk.number() + ": poll book check recorded.",
                    caseVersion -> desk.acts()
                            .answers()
                            .recordPollBook(new PollBookSeen(
                                    caseVersion.key(), caseVersion.version(), signed.getValue(), seen.getValue())));
        });
        signed.setItems(true, false);
        signed.setItemLabelGenerator(
                yes -> yes ? "This voter signed and voted there" : "The check-in is not this voter's");
        signed.addClassName("in-lines");
        with(signed, seen);
    }
}
