package org.proviso.review.ui.desk;

import com.vaadin.flow.component.textfield.TextArea;

/** A supervisor releases a case for somebody who is away, with the reason. */
final class ReleaseCaseSheet extends CaseSheet {

    ReleaseCaseSheet(CasePageContext desk) {
        this(desk, words("Reason to release the case"));
    }

    private ReleaseCaseSheet(CasePageContext desk, TextArea because) {
        super("Release envelope " + desk.number(), "Release case", refusing -> {
            if (because.getValue().isBlank()) {
                return missing(because, "Required. Enter the reason.");
            }
            return desk.awayFromSheet(
                    refusing,
                    "Envelope " + desk.number() + " is back in the queue.",
                    seen -> desk.acts().cases().release(seen.key(), seen.version(), because.getValue()));
        });
        with("The case is assigned to " + desk.file().holding().by()
                + ". What was recorded on it stays. Another reviewer can take it.");
        with(because);
    }
}
