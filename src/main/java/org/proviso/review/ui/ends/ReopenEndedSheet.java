package org.proviso.review.ui.ends;

import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.Optional;
import org.proviso.core.EnvelopeNumber;
import org.proviso.review.ends.EndedCaseService;
import org.proviso.ui.field.ActDialog;

/** Reopens a case that was sent on or closed without a decision, with the reason. */
public final class ReopenEndedSheet {

    private ReopenEndedSheet() {}

    /** Where the other county has said that it received the envelope, the sheet says so ({@code receipt}). */
    public static void open(EnvelopeNumber number, Optional<String> receipt, EndedCaseService ended, EndActs acts) {
        TextArea because = EndFields.area("Reason for reopening");
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog(
                "Reopen envelope " + number,
                "Reopen case",
                () -> EndFields.given(because, "Required. Your reason is kept with the record.")
                        && acts.run(
                                sheet[0]::refuse,
                                done(number, receipt),
                                seen -> ended.reopen(seen.key(), seen.version(), because.getValue())));
        sheet[0].with("The case goes back to the reviewers. Make sure that the envelope is here, or ask for it back.");
        receipt.ifPresent(words -> {
            Paragraph warning = new Paragraph(words + " The reopening sets this receipt aside.");
            warning.addClassName("warn");
            sheet[0].with(warning);
        });
        sheet[0].with(because).open();
    }

    private static String done(EnvelopeNumber number, Optional<String> receipt) {
        return "Envelope " + number + " reopened. It goes back to the reviewers."
                + receipt.map(words -> " Receipt set aside: " + words).orElse("");
    }
}
