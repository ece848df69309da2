package org.proviso.review.ui.desk;

import com.vaadin.flow.component.textfield.TextArea;

/** Puts this one of the voter's envelopes forward, with the reason; the others wait until it is decided. */
final class ChooseEnvelopeSheet extends CaseSheet {

    ChooseEnvelopeSheet(CasePageContext desk) {
        this(desk, words("Why this one"));
    }

    private ChooseEnvelopeSheet(CasePageContext desk, TextArea reason) {
        super(
                "Put envelope " + desk.number() + " forward",
                "Put it forward",
                refusing -> desk.fromSheet(
                        refusing,
                        "Envelope " + desk.number() + " is put forward; the voter's others wait.",
                        seen -> desk.acts().groups().chooseToCount(seen.key(), seen.version(), reason.getValue())));
        with("One envelope of a voter counts. The others wait until this one is decided.");
        with(reason);
    }
}
