package org.proviso.review.ui.desk;

import com.vaadin.flow.component.combobox.MultiSelectComboBox;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.util.List;
import java.util.function.Predicate;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.review.ProposeOutcome;

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
                    new TextField("Legal reference (required to reject)"),
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
        with(fields.as(), fields.reasons(), fields.reference(), fields.because());
    }

    private static Predicate<RefusalDisplay> propose(CasePageContext desk, Fields fields) {
        return refusing -> {
            DecisionOutcome as = fields.as().getValue();
            if (as == null) {
                refusing.refuse("Choose a proposed outcome.");
                return false;
            }
            return desk.lastFromSheet(
                    refusing,
                    RecommendedProposal.done(desk.number(), as),
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
