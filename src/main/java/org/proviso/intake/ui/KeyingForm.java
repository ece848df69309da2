package org.proviso.intake.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import org.proviso.ui.field.ChoiceField;
import org.proviso.ui.field.TypedField;

/** The boxes of an envelope in the order of its paper, in two columns. Enter goes on to the next box. */
final class KeyingForm extends Div {

    private final Map<KeyingBox, KeyingField> typed = new EnumMap<>(KeyingBox.class);
    private final Map<KeyingChoice, ChoiceField> chosen = new EnumMap<>(KeyingChoice.class);
    private final VoterStatements statements;
    private final transient Runnable changed;

    KeyingForm(Supplier<LocalDate> today, Runnable changed) {
        this.changed = changed;
        addClassName("keying");
        getElement().setAttribute("data-typing", "go-on");
        statements = new VoterStatements(changed);
        for (KeyingBox box : KeyingBox.values()) {
            typed.put(box, new KeyingField(box, today, changed));
        }
        for (KeyingChoice choice : KeyingChoice.values()) {
            chosen.put(
                    choice,
                    new ChoiceField(choice.code(), choice.label(), choice.choices()).onChosen(code -> changed.run()));
        }
        signature().onChosen(code -> askSigned()).onLeave(this::askSigned);
        add(voter(), rest());
    }

    private ChoiceField signature() {
        return Objects.requireNonNull(chosen.get(KeyingChoice.VOTER_SIGNED), "the form has every choice");
    }

    /** An unsigned envelope is another case than one whose signature nobody looked for. */
    private boolean askSigned() {
        signature()
                .question(
                        isSignatureAsked() ? "Did the voter sign? Keep \"not stated\" only if it cannot be told." : "",
                        changed);
        return signature().isAsking();
    }

    private boolean isSignatureAsked() {
        return signature().code().equals("unknown");
    }

    private Div voter() {
        Div column = new Div(new H2("Voter's statement"));
        for (KeyingBox box : KeyingBox.values()) {
            if (box.compareTo(KeyingBox.DRIVERS_LICENSE) < 0) {
                column.add(field(box));
            }
        }
        return column;
    }

    private Div rest() {
        Div column = new Div(new H2("Voter's statement, continued"));
        for (KeyingBox box : KeyingBox.values()) {
            if (box.compareTo(KeyingBox.DRIVERS_LICENSE) >= 0 && box != KeyingBox.OFFICIAL_NOTE) {
                column.add(field(box));
            }
        }
        column.add(statements, new H2("Poll worker's part and envelope"));
        chosen.values().forEach(column::add);
        column.add(field(KeyingBox.OFFICIAL_NOTE));
        return column;
    }

    private TypedField field(KeyingBox box) {
        return Objects.requireNonNull(typed.get(box), "the form has every box").field();
    }

    /** What stands in every box, right or not. */
    Map<String, String> boxes() {
        Map<String, String> boxes = new LinkedHashMap<>();
        typed.values().forEach(box -> box.into(boxes));
        chosen.forEach((choice, field) -> boxes.put(choice.code(), field.code()));
        if (signature().isKept()) {
            boxes.put(KeyingChoice.VOTER_SIGNED.code() + KeyingFormReader.KEPT, "yes");
        }
        statements.into(boxes);
        return boxes;
    }

    void fill(Map<String, String> boxes) {
        typed.values().forEach(box -> box.from(boxes));
        chosen.forEach((choice, field) -> field.code(boxes.getOrDefault(
                choice.code(), choice.choices().keySet().iterator().next())));
        if (isSignatureAsked() && boxes.containsKey(KeyingChoice.VOTER_SIGNED.code() + KeyingFormReader.KEPT)) {
            signature().keep();
        }
        statements.from(boxes);
    }

    /** Asks about everything that is unlikely, and leads the keyboard to the first; whether an answer is missing. */
    boolean asks() {
        Optional<KeyingField> first =
                typed.values().stream().filter(KeyingField::ask).findFirst();
        boolean signed = !askSigned();
        first.ifPresent(field -> field.field().focus());
        if (first.isEmpty() && !signed) {
            signature().focus();
        }
        return first.isPresent() || !signed;
    }

    /** Says beside each box what is wrong, and leads the keyboard to the first. */
    void problems(Map<String, String> problems) {
        typed.forEach((box, field) -> field.field().problem(problems.getOrDefault(box.code(), "")));
        statements.problem(problems.getOrDefault(KeyingFormReader.STATEMENTS, ""));
        typed.entrySet().stream()
                .filter(entry -> problems.containsKey(entry.getKey().code()))
                .findFirst()
                .ifPresent(entry -> entry.getValue().field().focus());
    }

    void focusFirst() {
        field(KeyingBox.LAST_NAME).focus();
    }
}
