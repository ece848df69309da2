package org.proviso.review.ui.desk;

import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.datetimepicker.DateTimePicker;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.Collection;
import java.util.Set;
import java.util.function.Predicate;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.adjudication.questions.QuestionHeading;
import org.proviso.review.acts.RecordAnswer;
import org.proviso.review.facts.AnswerRules;
import org.proviso.ui.field.ActDialog;

/** Overrides the records' answer to a question, with a reason. */
final class OverrideAnswerSheet extends CaseSheet {

    /** Facts with an act of their own on the page. */
    static final Set<Fact<?>> BY_OTHER_ACTS =
            Set.of(Fact.IDENTITY, Fact.CHECK_IN, Fact.SIGNATURE_COMPARISON, Fact.OTHER_ENVELOPE, Fact.COURT_ORDER);

    /** The fields of the sheet. */
    private record Fields(
            Select<Fact<?>> fact, CheckboxGroup<FactWord> words, TextArea reason, DateTimePicker receivedAt) {

        static Fields empty() {
            return new Fields(
                    new Select<>(),
                    new CheckboxGroup<>("Answer"),
                    CaseSheet.words("Reason"),
                    new DateTimePicker("Date and time stamped on the paper relied on (optional)"));
        }
    }

    OverrideAnswerSheet(CasePageContext desk, QuestionHeading heading, Collection<Fact<?>> facts) {
        this(desk, heading, facts, Fields.empty());
    }

    private OverrideAnswerSheet(
            CasePageContext desk, QuestionHeading heading, Collection<Fact<?>> facts, Fields fields) {
        super("Override this answer: " + heading.asks(), "Record answer", give(desk, fields));
        fields.receivedAt().setDateAriaLabel("Date");
        fields.receivedAt().setTimeAriaLabel("Time");
        fields.fact().setLabel("Fact");
        fields.fact().setItems(facts.stream().toList());
        fields.fact().setItemLabelGenerator(Fact::meaning);
        fields.fact().setWidthFull();
        fields.words().addClassName("in-lines");
        fields.words().setItemLabelGenerator(FactWord::meaning);
        fields.fact().addValueChangeListener(event -> offer(event.getValue(), fields.words()));
        fields.words().addValueChangeListener(event -> onlyOne(fields, event.getOldValue()));
        fields.fact().setValue(facts.iterator().next());
        with("Your answer replaces what the records say and is kept as evidence.");
        with(fields.fact(), fields.words(), fields.reason(), fields.receivedAt());
    }

    private static void offer(Fact<?> fact, CheckboxGroup<FactWord> words) {
        words.setItems(AnswerRules.offered(fact));
    }

    /** A fact with a single answer keeps only the newest check mark. */
    private static void onlyOne(Fields fields, Set<FactWord> before) {
        Set<FactWord> ticked = fields.words().getValue();
        Fact<?> fact = fields.fact().getValue();
        if (fact != null && !fact.severalMayHold() && ticked.size() > 1) {
            fields.words()
                    .setValue(ticked.stream()
                            .filter(word -> !before.contains(word))
                            .limit(1)
                            .collect(java.util.stream.Collectors.toSet()));
        }
    }

    private static Predicate<RefusalDisplay> give(CasePageContext desk, Fields fields) {
        return refusing -> {
            if (fields.words().getValue().isEmpty()) {
                return ActDialog.refuse(fields.words(), "Choose an answer.");
            }
            if (fields.reason().getValue().isBlank()) {
                return missing(fields.reason(), "Required. Give a reason for overriding the records.");
            }
            return desk.fromSheet(
                    refusing,
                    "Envelope " + desk.number() + ": answer recorded.",
                    seen -> desk.acts()
                            .answers()
                            .answer(new RecordAnswer(
                                    seen.key(),
                                    seen.version(),
                                    fields.fact().getValue(),
                                    fields.words().getValue(),
                                    fields.reason().getValue(),
                                    fields.receivedAt().getValue())));
        };
    }
}
