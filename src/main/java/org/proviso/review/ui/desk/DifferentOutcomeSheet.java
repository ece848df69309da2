package org.proviso.review.ui.desk;

import com.vaadin.flow.component.combobox.MultiSelectComboBox;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.deciding.CountAgainstRules;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.review.ProposeOutcome;
import org.proviso.ui.field.ActDialog;

/** Proposes a different outcome than the rules recommend, with the reason. */
final class DifferentOutcomeSheet extends CaseSheet {

    /** The fields of the sheet. */
    private record Fields(
            RadioButtonGroup<DecisionOutcome> as,
            MultiSelectComboBox<Reason> reasons,
            TextField reference,
            TextArea because) {

        static Fields empty() {
            return new Fields(
                    new RadioButtonGroup<>("Proposed outcome"),
                    new MultiSelectComboBox<>("Reasons (required to reject)"),
                    new TextField("Legal reference (required to reject, or to count against the rules)"),
                    words("Why you propose a different outcome"));
        }
    }

    DifferentOutcomeSheet(CasePageContext desk) {
        this(desk, Fields.empty());
    }

    private DifferentOutcomeSheet(CasePageContext desk, Fields fields) {
        super("Propose a different outcome for envelope " + desk.number(), "Submit proposal", propose(desk, fields));
        Recommendation says = desk.file().report().recommendation();
        fields.as().setItems(List.of(DecisionOutcome.values()));
        fields.as().setItemLabelGenerator(DecisionOutcome::words);
        fields.reasons().setItems(Reason.values());
        fields.reasons().setItemLabelGenerator(Reason::words);
        fields.reasons().setWidthFull();
        fields.reference().setWidthFull();
        fields.reference().setMaxLength(1_000);
        with("On these facts the rules say: " + says.words() + ". People decide. Give your reason.");
        Paragraph against = new Paragraph();
        against.addClassName("warn");
        against.setVisible(false);
        fields.as().addValueChangeListener(event -> {
            Optional<CountAgainstRules> rules = against(desk, event.getValue());
            against.setVisible(rules.isPresent());
            against.setText(rules.map(CountAgainstRules::words).orElse("")
                    + " It needs a legal reference and a reason, and a different reviewer does the second review.");
        });
        with(fields.as(), against, fields.reasons(), fields.reference(), fields.because());
    }

    private static Optional<CountAgainstRules> against(CasePageContext desk, @Nullable DecisionOutcome as) {
        return Optional.ofNullable(as)
                .flatMap(outcome -> CountAgainstRules.of(
                        outcome, Set.of(), desk.file().report().settled()));
    }

    private static Predicate<RefusalDisplay> propose(CasePageContext desk, Fields fields) {
        return refusing -> {
            DecisionOutcome as = fields.as().getValue();
            if (as == null) {
                return ActDialog.refuse(fields.as(), "Choose a proposed outcome.");
            }
            return desk.lastFromSheet(
                    refusing,
                    RecommendedProposal.done(
                            desk.number(),
                            as,
                            as != DecisionOutcome.COUNT || against(desk, as).isPresent()),
                    seen -> desk.acts()
                            .proposals()
                            .propose(new ProposeOutcome(
                                    seen.key(),
                                    seen.version(),
                                    as,
                                    List.copyOf(fields.reasons().getValue()),
                                    fields.reference().getValue(),
                                    fields.because().getValue())));
        };
    }
}
