package org.proviso.review.ui.desk;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.Optional;
import org.proviso.review.CaseState;
import org.proviso.review.file.ProposalDetails;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;

/** The foot for a second reader: what was proposed, by whom and why, and the word on it. */
final class SecondReviewFoot extends Div {

    private final CasePageContext desk;

    SecondReviewFoot(CasePageContext desk) {
        this.desk = desk;
        addClassName("case-foot");
        Optional<ProposalDetails> proposed = desk.file().work().proposed();
        boolean waits = desk.file().now().state() == CaseState.PROPOSED && proposed.isPresent();
        if (!waits) {
            add(new Span(UnassignedCaseActs.why(desk)));
            return;
        }
        add(says(proposed.get()));
        Div acts = new Div();
        acts.addClassName("acts");
        if (proposed.get().yours()) {
            acts.add(new Span("You proposed this: somebody else reads it."));
        } else {
            acts.add(
                    new ActButton("Send it back, with a note", "B")
                            .does(() -> sheet(false).open()),
                    new ActButton("Agree", "A").first().does(() -> sheet(true).open()));
        }
        add(acts);
    }

    private static Div says(ProposalDetails proposed) {
        Div mark = new Div(CaseFoot.mark(proposed.proposal().as().recommendation()));
        mark.addClassName("verdict");
        String reasons = RecommendedProposal.words(proposed.proposal().grounds().reasons());
        String departs = proposed.proposal().grounds().departsBecause();
        Div why = new Div(new Span("proposed by " + proposed.by() + " on " + UsDates.near(proposed.at())
                + (reasons.isEmpty() ? "" : ": " + reasons)
                + (departs.isEmpty() ? "" : ". Otherwise than recommended: \u201C" + departs + "\u201D")));
        why.addClassNames("soft", "small");
        Div caution = new Div(new Span("people decide, local law governs"));
        caution.addClassNames("soft", "small");
        return new Div(mark, why, caution);
    }

    private CaseSheet sheet(boolean agrees) {
        TextArea note = CaseSheet.words(agrees ? "Note (may be left empty)" : "Note for the proposer");
        CaseSheet sheet = new CaseSheet(
                (agrees ? "Agree: envelope " : "Send back: envelope ") + desk.number(),
                agrees ? "Agree" : "Send it back",
                refusing -> desk.lastFromSheet(
                        refusing,
                        "Envelope " + desk.number()
                                + (agrees
                                        ? ": you agreed. It goes to the decider."
                                        : ": sent back. It waits for a reviewer again."),
                        seen -> desk.acts()
                                .proposals()
                                .secondReview(seen.key(), seen.version(), agrees, note.getValue())));
        if (agrees) {
            sheet.with(new Paragraph("You have read the case yourself. This cannot be taken back."));
        }
        sheet.with(note);
        return sheet;
    }
}
