package org.proviso.setup;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
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
    private final TypedField rule = new TypedField("rule", "Rule").like("mail.returned");
    private final TypedField value = new TypedField("value", "Value");
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
                value,
                signedBy,
                on,
                ground,
                sign);
    }

    /** Starts with one value from the work list. */
    void rule(ResolvedRule given) {
        rule.text(given.rule().key());
        value.text("");
        about.setText(
                given.isKnown()
                        ? "Leave the value empty to confirm \"" + given.value().inWords() + "\", or enter another."
                        : "Enter the value as a rule pack spells it"
                                + (given.rule().words().isEmpty()
                                        ? "."
                                        : ": " + String.join(", ", given.rule().words()) + "."));
        signedBy.focus();
    }

    private void sign() {
        Optional<LocalDate> day = TypedDates.day(on.text());
        demand(rule);
        demand(signedBy);
        demand(ground);
        on.problem(day.isEmpty() ? TypedDates.LIKE_A_DAY : "");
        if (rule.hasProblem() || signedBy.hasProblem() || ground.hasProblem() || day.isEmpty()) {
            MessageLine.refused("Not saved. Check the highlighted fields.");
            return;
        }
        value.problem("");
        ActResult<Integer> result = rulings.record(
                new SignRuling(election, rule.text(), value.text(), signedBy.text(), day.get(), ground.text()));
        result.refusals().forEach(refusal -> at(refusal.field()).problem(refusal.words()));
        result.ifAccepted().ifPresent(number -> {
            MessageLine.done("Ruling " + number + " recorded. Another supervisor has to put it in force.");
            rule.text("");
            value.text("");
            about.setText("");
            after.run();
        });
    }

    private TypedField at(@Nullable String field) {
        return "rule".equals(field) ? rule : value;
    }

    private static void demand(TypedField field) {
        field.problem(field.text().isEmpty() ? "Required." : "");
    }
}
