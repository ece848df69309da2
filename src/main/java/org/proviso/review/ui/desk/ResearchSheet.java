package org.proviso.review.ui.desk;

import com.vaadin.flow.component.textfield.TextArea;
import java.util.List;
import org.proviso.review.CaseActResult;
import org.proviso.review.CaseVersion;
import org.proviso.review.facts.ResearchRequest;

/** Asks somebody something about the case; the case waits in the queue until the answer is noted. */
final class ResearchSheet extends CaseSheet {

    ResearchSheet(CasePageContext desk) {
        this(desk, words("What is to be found out, and from whom"));
    }

    private ResearchSheet(CasePageContext desk, TextArea asked) {
        super("Ask for research on envelope " + desk.number(), "Ask, and give the case back", refusing -> {
            if (asked.getValue().isBlank()) {
                return missing(asked, "Write what is to be found out.");
            }
            return desk.lastFromSheet(
                    refusing,
                    "Envelope " + desk.number() + ": research is asked for. It waits for the answer.",
                    seen -> ask(desk, seen, asked.getValue()));
        });
        List<String> open = desk.file().report().stillOpen();
        if (!open.isEmpty()) {
            with("Still open: " + String.join("; ", open) + ".");
            asked.setValue(String.join("; ", open));
        }
        with(asked);
    }

    private static CaseActResult ask(CasePageContext desk, CaseVersion seen, String asked) {
        CaseActResult back = desk.acts().cases().giveBack(seen.key(), seen.version());
        if (back instanceof CaseActResult.Accepted) {
            desk.acts().research().ask(seen.key(), asked);
        }
        return back;
    }

    /** Notes what came back of a request. */
    static final class ResearchAnswerSheet extends CaseSheet {

        ResearchAnswerSheet(CasePageContext desk, ResearchRequest request) {
            this(desk, request, words("What was found out"));
        }

        private ResearchAnswerSheet(CasePageContext desk, ResearchRequest request, TextArea found) {
            super("What came back", "Note it", refusing -> {
                if (found.getValue().isBlank()) {
                    return missing(found, "Write what was found out.");
                }
                desk.acts().research().recordAnswer(desk.key(), request.number(), request.version(), found.getValue());
                desk.again();
                return true;
            });
            with("Asked: " + request.asked());
            with(found);
        }
    }
}
