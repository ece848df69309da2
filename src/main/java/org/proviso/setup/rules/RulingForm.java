package org.proviso.setup.rules;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import java.time.LocalDate;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.core.act.ActResult;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.election.rules.RulingService;
import org.proviso.election.rules.SignRuling;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.TypedDates;
import org.proviso.ui.field.TypedField;

/** A ruling as the office signed it on paper. */
final class RulingForm extends Div {

    private final transient RulingService rulings;
    private final ElectionId election;
    private final Runnable after;
    private final Paragraph about = new Paragraph();
    private final RuleValueFields rule = new RuleValueFields("choose a rule", "the pack's own value, confirmed");
    private final TypedField signedBy = new TypedField("signed-by", "Signed by").like("County Clerk");
    private final TypedField on = new TypedField("on", "Date signed").like("11/3/2026");
    private final TypedField ground = new TypedField("ground", "Based on").like("counsel's letter");

    RulingForm(RulingService rulings, ElectionId election, Runnable after) {
        this.rulings = rulings;
        this.election = election;
        this.after = after;
        getElement().setAttribute("data-typing", "go-on");
        about.getElement().setAttribute("role", "status");
        ActButton sign = new ActButton("Record ruling").first().does(this::sign);
        sign.getElement().setAttribute("data-finish", true);
        add(
                new H2("Record a ruling"),
                new Paragraph(
                        "The ruling applies to this election only. Another supervisor puts it in force; open cases"
                                + " are reassessed then."),
                about,
                rule,
                signedBy,
                on,
                ground,
                sign);
    }

    /** Starts with one value from the work list. */
    void rule(ResolvedRule given) {
        rule.choose(given.rule().key());
        about.setText(
                given.isKnown()
                        ? "Choose no value to confirm \"" + given.value().inWords() + "\", or give another."
                        : "The pack has no value. Choose it, or enter it as a rule pack spells it.");
        signedBy.focus();
    }

    private void sign() {
        Optional<LocalDate> day = TypedDates.day(on.text());
        rule.problem(rule.key().isEmpty() ? "Choose a rule." : "");
        demand(signedBy);
        demand(ground);
        on.problem(day.isEmpty() ? TypedDates.LIKE_A_DAY : "");
        if (rule.key().isEmpty() || signedBy.hasProblem() || ground.hasProblem() || day.isEmpty()) {
            MessageLine.refused("Not saved. Check the highlighted fields.");
            return;
        }
        rule.problem("");
        ActResult<Integer> result = rulings.record(
                new SignRuling(election, rule.key(), rule.value(), signedBy.text(), day.get(), ground.text()));
        result.refusals().forEach(refusal -> rule.problem(refusal.words()));
        result.ifAccepted().ifPresent(number -> {
            MessageLine.done("Ruling " + number + " recorded. Another supervisor has to put it in force.");
            rule.clear();
            about.setText("");
            after.run();
        });
    }

    private static void demand(TypedField field) {
        field.problem(field.text().isEmpty() ? "Required." : "");
    }
}
