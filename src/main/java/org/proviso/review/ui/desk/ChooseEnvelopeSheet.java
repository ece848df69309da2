package org.proviso.review.ui.desk;

import com.vaadin.flow.component.textfield.TextArea;

/** Chooses this one of the voter's envelopes to count, with the reason. The others wait until it is decided. */
final class ChooseEnvelopeSheet extends CaseSheet {

    ChooseEnvelopeSheet(CasePageContext desk) {
        this(desk, words("Why this envelope"));
    }

    private ChooseEnvelopeSheet(CasePageContext desk, TextArea reason) {
        super(
                "Choose envelope " + desk.number() + " to count",
                "Choose this envelope",
                refusing -> desk.fromSheet(
                        refusing,
                        "Envelope " + desk.number() + " chosen to count. The voter's other envelopes wait.",
                        seen -> desk.acts().groups().chooseToCount(seen.key(), seen.version(), reason.getValue())));
        with("Only one envelope per voter can count. The others wait until this one is decided.");
        with(reason);
    }
}
