package org.proviso.review.ui.desk;

import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.TextArea;
import org.proviso.review.facts.PollBookSeen;

/** Records what the poll book of another location shows. */
final class PollBookSheet extends CaseSheet {

    PollBookSheet(CasePageContext desk) {
        this(desk, new RadioButtonGroup<>("In that poll book"), words("What you saw"));
    }

    private PollBookSheet(CasePageContext desk, RadioButtonGroup<Boolean> signed, TextArea seen) {
        super("What the poll book shows", "Record it", refusing -> {
            if (signed.getValue() == null) {
                refusing.refuse("Say whether the voter signed there.");
                return false;
            }
            if (seen.getValue().isBlank()) {
                return missing(seen, "Write what you saw: which book, which line, whose signature.");
            }
            return desk.fromSheet(
                    refusing,
                    "Envelope " + desk.number() + ": what the poll book shows is recorded.",
                    one -> desk.acts()
                            .answers()
                            .recordPollBook(
                                    new PollBookSeen(one.key(), one.version(), signed.getValue(), seen.getValue())));
        });
        signed.setItems(true, false);
        signed.setItemLabelGenerator(
                yes -> yes ? "this voter signed: the voter voted there" : "the check-in is not this voter's");
        signed.addClassName("in-lines");
        with(signed, seen);
    }
}
