package org.proviso.review.ui.desk;

import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.util.List;
import org.proviso.core.act.ActResult;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.facts.ResearchRequest;
import org.proviso.review.facts.WaitsFor;

/** Requests research on the case. The case waits in the queue until the result is recorded. */
final class ResearchSheet extends CaseSheet {

    ResearchSheet(CasePageContext desk) {
        this(
                desk,
                new RadioButtonGroup<>("Who has to answer"),
                new TextField("Whom you ask"),
                words("What to find out"));
    }

    private ResearchSheet(
            CasePageContext desk, RadioButtonGroup<WaitsFor> waitsFor, TextField addressee, TextArea asked) {
        super("Request research on envelope " + desk.number(), "Request research", refusing -> {
            if (addressee.getValue().isBlank()) {
                addressee.setInvalid(true);
                addressee.setErrorMessage("Required. Enter whom you ask.");
                addressee.focus();
                return false;
            }
            if (asked.getValue().isBlank()) {
                return missing(asked, "Required. Enter what to find out.");
            }
            return desk.awayFromSheet(
                    refusing,
                    "Envelope " + desk.number() + ": research requested. The case waits for the result.",
                    seen -> desk.acts()
                            .research()
                            .askAndGiveBack(
                                    seen.key(),
                                    seen.version(),
                                    waitsFor.getValue(),
                                    addressee.getValue(),
                                    asked.getValue()));
        });
        List<String> open = desk.file().report().stillOpen();
        if (!open.isEmpty()) {
            with("Open questions: " + String.join("; ", open) + ".");
            asked.setValue(String.join("; ", open));
        }
        waitsFor.setItems(WaitsFor.values());
        waitsFor.setItemLabelGenerator(WaitsFor::words);
        waitsFor.setValue(WaitsFor.ANOTHER_OFFICE);
        addressee.setWidthFull();
        addressee.setMaxLength(200);
        addressee.setPlaceholder("e.g., Depot Street Library, chief judge");
        with(waitsFor, addressee, asked);
    }

    /** Records the result of a research request. */
    static final class ResearchAnswerSheet extends CaseSheet {

        ResearchAnswerSheet(CasePageContext desk, ResearchRequest request) {
            this(desk, request, words("Result"));
        }

        private ResearchAnswerSheet(CasePageContext desk, ResearchRequest request, TextArea found) {
            super("Research result", "Record result", refusing -> {
                if (found.getValue().isBlank()) {
                    return missing(found, "Required. Enter the result.");
                }
                ActResult<EnvelopeCase> recorded = desk.acts()
                        .research()
                        .recordAnswer(desk.key(), request.number(), request.version(), found.getValue());
                if (recorded instanceof ActResult.Refused<EnvelopeCase> refused) {
                    refusing.refuse(refused.words());
                    return false;
                }
                desk.again();
                return true;
            });
            with("Requested: " + request.asked());
            with(found);
        }
    }
}
