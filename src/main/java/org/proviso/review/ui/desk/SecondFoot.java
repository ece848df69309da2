package org.proviso.review.ui.desk;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.Optional;
import org.proviso.review.CaseState;
import org.proviso.review.file.Proposed;
import org.proviso.ui.ActButton;
import org.proviso.ui.UsDates;

/** The foot for second review: what was proposed, by whom and why, and the buttons to agree or send back. */
final class SecondFoot extends Div {

    private final Desk desk;

    SecondFoot(Desk desk) {
        this.desk = desk;
        addClassName("case-foot");
        Optional<Proposed> proposed = desk.file().work().proposed();
        boolean waits = desk.file().now().state() == CaseState.PROPOSED && proposed.isPresent();
        if (!waits) {
            add(new Span(StandingActs.why(desk)));
            return;
        }
        add(says(proposed.get()));
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

    private static Div says(Proposed proposed) {
        Div mark = new Div(CaseFoot.mark(proposed.proposal().as().recommendation()));
        mark.addClassName("verdict");
        String reasons = Proposing.words(proposed.proposal().grounds().reasons());
        String departs = proposed.proposal().grounds().departsBecause();
        Div why = new Div(new Span("Proposed by " + proposed.by() + " on " + UsDates.near(proposed.at())
                + (reasons.isEmpty() ? "" : ": " + reasons)
                + (departs.isEmpty() ? "" : ". Differs from the recommendation: \u201C" + departs + "\u201D")));
        why.addClassNames("soft", "small");
        Div caution = new Div(new Span("People decide; local law governs."));
        caution.addClassNames("soft", "small");
        return new Div(mark, why, caution);
    }

    private Sheet sheet(boolean agrees) {
        TextArea note = Sheet.words(agrees ? "Note (optional)" : "Note for the proposer");
        Sheet sheet = new Sheet(
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
