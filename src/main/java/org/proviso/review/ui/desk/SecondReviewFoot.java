package org.proviso.review.ui.desk;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.deciding.CountAgainstRules;
import org.proviso.review.CaseState;
import org.proviso.review.file.ProposalDetails;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;

/** The foot for second review: what was proposed, by whom and why, and the buttons to agree or send back. */
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
        CountAgainstRules.of(
                        proposed.get().proposal().as(),
                        Set.of(),
                        desk.file().report().settled())
                .ifPresent(rules -> {
                    String reference = proposed.get().proposal().grounds().legalReference();
                    Paragraph warning = new Paragraph(rules.words() + " Legal reference given: " + reference + ".");
                    warning.addClassName("warn");
                    add(warning);
                });
        Div acts = new Div();
        acts.addClassName("acts");
        if (proposed.get().yours()) {
            acts.add(new Span("You proposed this. A different reviewer does the second review."));
        } else {
            acts.add(
                    new ActButton("Send back with a note", "B")
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
        Div why = new Div(new Span("Proposed by " + proposed.by() + " on " + UsDates.near(proposed.at())
                + (reasons.isEmpty() ? "" : ": " + reasons)
                + (departs.isEmpty() ? "" : ". Differs from the recommendation: \u201C" + departs + "\u201D")));
        why.addClassNames("soft", "small");
        Div caution = new Div(new Span("People decide; local law governs."));
        caution.addClassNames("soft", "small");
        return new Div(mark, why, caution);
    }

    private CaseSheet sheet(boolean agrees) {
        TextArea note = CaseSheet.words(agrees ? "Note (optional)" : "Note for the proposer");
        CaseSheet sheet = new CaseSheet(
                (agrees ? "Agree: envelope " : "Send back: envelope ") + desk.number(),
                agrees ? "Agree" : "Send back",
                refusing -> desk.lastFromSheet(
                        refusing,
                        "Envelope " + desk.number()
                                + (agrees ? ": you agreed. It goes to the decider." : ": sent back to the reviewers."),
                        seen -> desk.acts()
                                .proposals()
                                .secondReview(seen.key(), seen.version(), agrees, note.getValue())));
        if (agrees) {
            sheet.with(new Paragraph("Confirm that you read the case yourself. This cannot be undone."));
        }
        sheet.with(note);
        return sheet;
    }
}
