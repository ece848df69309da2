package org.proviso.review.ui.ends;

import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.Optional;
import org.proviso.core.EnvelopeNumber;
import org.proviso.review.ends.EndedCaseService;
import org.proviso.review.ends.RecordCountyReceipt;
import org.proviso.ui.field.ActDialog;
import org.proviso.ui.field.TypedDates;

/** Records that the other county received an envelope: the day, who received it there, and its number there. */
public final class CountyReceiptSheet {

    private CountyReceiptSheet() {}

    /** Opens the sheet over the page that shows the case. */
    public static void open(EnvelopeNumber number, EndedCaseService ended, EndActs acts) {
        TextField day = EndFields.line("Day it was received there");
        TextField by = EndFields.line("Received there by");
        TextField reference = EndFields.line("Number the other county gave it (optional)");
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog("Record receipt for envelope " + number, "Record receipt", () -> {
            Optional<LocalDate> received = TypedDates.day(day.getValue());
            day.setErrorMessage(TypedDates.LIKE_A_DAY);
            day.setInvalid(received.isEmpty());
            boolean named = EndFields.given(by, "Required. Enter who received it there.");
            return received.isPresent()
                    && named
                    && acts.run(
                            sheet[0]::refuse,
                            "Envelope " + number + ": receipt recorded.",
                            seen -> ended.recordReceipt(new RecordCountyReceipt(
                                    seen.key(), seen.version(), received.get(), by.getValue(), reference.getValue())));
        });
        sheet[0].with("What the other county said when it received the envelope. The case stays as it is.")
                .with(day, by, reference)
                .open();
    }
}
