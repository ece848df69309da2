package org.proviso.board.ui;

import com.vaadin.flow.component.combobox.MultiSelectComboBox;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.proviso.board.MotionKind;
import org.proviso.board.ProposalForDecision;
import org.proviso.board.agenda.EnvelopeSummary;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.deciding.CountAgainstRules;
import org.proviso.core.rules.Reason;
import org.proviso.ui.field.ActDialog;

/** Asks for the details of a motion, or of an official's decision. */
final class MotionSheet {

    /** What was asked for. */
    record MotionInput(
            MotionKind kind,
            Map<EnvelopeNumber, Integer> envelopes,
            Set<String> contests,
            List<Reason> reasons,
            String reference,
            String because) {}

    /** Makes the motion or decides; the words of the refusal, if refused. */
    @FunctionalInterface
    interface MotionAct {
        Optional<String> of(MotionInput wanted);
    }

    private final MotionAct act;
    private final @Nullable MotionAct andOpen;
    private final boolean moves;

    private MotionSheet(MotionAct act, @Nullable MotionAct andOpen) {
        this.act = act;
        this.andOpen = andOpen;
        this.moves = andOpen != null;
    }

    /** For a member, who moves something that the board votes on; or moves it and opens the vote on it at once. */
    static MotionSheet toMove(MotionAct act, MotionAct andOpen) {
        return new MotionSheet(act, andOpen);
    }

    /** For an official, who decides alone. */
    static MotionSheet toDecide(MotionAct act) {
        return new MotionSheet(act, null);
    }

    /** A whole group, as proposed. */
    void group(AgendaGroup group, List<String> references) {
        TextField reference = reference(String.join("; ", references));
        boolean rejects = group.kind() == MotionKind.REJECT;
        ActDialog sheet = sheet(
                title(group),
                () -> new MotionInput(
                        group.kind(),
                        group.envelopes(),
                        Set.of(),
                        group.reasons(),
                        rejects ? reference.getValue() : "",
                        ""));
        sheet.with(BoardWords.recorded(group.kind(), group.envelopes().size(), group.reasons()));
        if (rejects) {
            sheet.with(reference);
        }
        sheet.open();
    }

    /** One envelope, with any outcome. */
    void one(EnvelopeSummary line, List<MotionKind> kinds) {
        ProposalForDecision proposed = line.proposed();
        RadioButtonGroup<MotionKind> kind = kinds(kinds, proposed);
        MultiSelectComboBox<Reason> reasons = reasons(proposed);
        MultiSelectComboBox<String> contests = contests(line);
        TextField reference = reference(proposed == null ? "" : proposed.legalReference());
        TextArea because = because(proposed);
        Paragraph against = new Paragraph();
        against.addClassName("warn");
        Runnable fields = () -> {
            MotionKind chosen = Objects.requireNonNull(kind.getValue());
            Optional<CountAgainstRules> rules = against(line, chosen);
            warn(against, rules);
            reasons.setVisible(chosen == MotionKind.REJECT || chosen == MotionKind.COUNT_IN_PART);
            // contests that the rules do not count are against them too; that is seen only when they are chosen
            reference.setVisible(reasons.isVisible() || rules.isPresent());
            contests.setVisible(chosen == MotionKind.COUNT_IN_PART);
            reference.setValue(referenceFor(chosen, rules, proposed, reference.getValue()));
        };
        kind.addValueChangeListener(event -> fields.run());
        fields.run();
        sheet(
                        (moves ? "Motion on envelope " : "Decision on envelope ") + line.envelopeNo(),
                        () -> new MotionInput(
                                kind.getValue(),
                                Map.of(line.envelopeNo(), line.version()),
                                contests.isVisible() ? contests.getValue() : Set.of(),
                                reasons.isVisible() ? new ArrayList<>(reasons.getValue()) : List.of(),
                                reference.isVisible() ? reference.getValue() : "",
                                because.getValue()))
                .with("The rules recommend: " + line.now().words() + ".")
                .with(kind, against, reasons, contests, reference, because)
                .open();
    }

    private static void warn(Paragraph against, Optional<CountAgainstRules> rules) {
        against.setText(rules.map(it -> it.words() + " It needs a legal reference and a reason.")
                .orElse(""));
        against.setVisible(rules.isPresent());
    }

    private static Optional<CountAgainstRules> against(EnvelopeSummary line, MotionKind chosen) {
        return chosen.asks().flatMap(asks -> CountAgainstRules.of(asks, line.now(), line.knownToHaveVoted()));
    }

    /** The place in the law for a rejection that was proposed is none to count it against the rules. */
    private static String referenceFor(
            MotionKind chosen,
            Optional<CountAgainstRules> rules,
            @Nullable ProposalForDecision proposed,
            String typed) {
        String place = proposed == null ? "" : proposed.legalReference();
        boolean asProposed = proposed != null
                && chosen.asks().filter(asks -> asks == proposed.outcome()).isPresent();
        if (rules.isPresent() && !asProposed) {
            return typed.equals(place) ? "" : typed;
        }
        return typed.isBlank() ? place : typed;
    }

    private ActDialog sheet(String title, Supplier<MotionInput> wanted) {
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog(title, button(), () -> ask(sheet[0], act, wanted.get()));
        if (andOpen != null) {
            sheet[0].or("Move and open the vote", () -> ask(sheet[0], andOpen, wanted.get()));
        }
        sheet[0].addClassName("board-sheet");
        return sheet[0];
    }

    private static boolean ask(ActDialog sheet, MotionAct act, MotionInput wanted) {
        return act.of(wanted).map(sheet::refuse).orElse(true);
    }

    private String title(AgendaGroup group) {
        return (moves ? "Move to " : "Decide to ")
                + BoardWords.moved(group.kind(), group.envelopes().size(), List.of());
    }

    private String button() {
        return moves ? "Make motion" : "Record decision";
    }

    private static RadioButtonGroup<MotionKind> kinds(List<MotionKind> kinds, @Nullable ProposalForDecision proposed) {
        RadioButtonGroup<MotionKind> kind = new RadioButtonGroup<>("Outcome");
        kind.setItems(kinds);
        kind.setItemLabelGenerator(motionKind -> BoardWords.sentence(motionKind.words()));
        kind.setValue(Optional.ofNullable(proposed)
                .map(found -> MotionKind.valueOf(found.outcome().name()))
                .filter(kinds::contains)
                .orElse(kinds.get(0)));
        return kind;
    }

    private static TextArea because(@Nullable ProposalForDecision proposed) {
        TextArea because = new TextArea("Reason (required to differ from the recommendation, table or reopen)");
        because.setWidthFull();
        because.setMaxLength(2000);
        because.setValue(proposed == null ? "" : proposed.departsBecause());
        return because;
    }

    private static MultiSelectComboBox<Reason> reasons(@Nullable ProposalForDecision proposed) {
        MultiSelectComboBox<Reason> reasons = new MultiSelectComboBox<>("Reasons, main reason first");
        reasons.setItems(Reason.values());
        reasons.setItemLabelGenerator(Reason::words);
        reasons.setWidthFull();
        if (proposed != null) {
            reasons.setValue(proposed.reasons());
        }
        return reasons;
    }

    private static MultiSelectComboBox<String> contests(EnvelopeSummary line) {
        MultiSelectComboBox<String> contests =
                new MultiSelectComboBox<>("Contests that count (leave empty to follow the recommendation)");
        contests.setItems(line.contests().keySet());
        contests.setItemLabelGenerator(id -> line.contests().getOrDefault(id, id));
        contests.setWidthFull();
        return contests;
    }

    private static TextField reference(String place) {
        TextField reference = new TextField("Legal reference");
        reference.setWidthFull();
        reference.setMaxLength(1000);
        reference.setValue(place);
        return reference;
    }
}
