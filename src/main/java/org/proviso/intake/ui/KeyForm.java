package org.proviso.intake.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.proviso.ui.ChoiceField;
import org.proviso.ui.TypedField;

/** The boxes of an envelope in the order of its paper, in two columns. Enter goes on to the next box. */
final class KeyForm extends Div {

    private final Map<KeyBox, StatedBox> typed = new EnumMap<>(KeyBox.class);
    private final Map<KeyChoice, ChoiceField> chosen = new EnumMap<>(KeyChoice.class);
    private final Statements statements;

    KeyForm(Runnable changed) {
        addClassName("keying");
        getElement().setAttribute("data-typing", "go-on");
        statements = new Statements(changed);
        for (KeyBox box : KeyBox.values()) {
            typed.put(box, new StatedBox(box, changed));
        }
        for (KeyChoice choice : KeyChoice.values()) {
            chosen.put(
                    choice,
                    new ChoiceField(choice.code(), choice.label(), choice.choices()).onChosen(code -> changed.run()));
        }
        add(voter(), rest());
    }

    private Div voter() {
        Div column = new Div(new H2("The voter wrote"));
        for (KeyBox box : KeyBox.values()) {
            if (box.compareTo(KeyBox.DRIVERS_LICENSE) < 0) {
                column.add(field(box));
            }
        }
        return column;
    }

    private Div rest() {
        Div column = new Div(new H2("The voter wrote, further down"));
        for (KeyBox box : KeyBox.values()) {
            if (box.compareTo(KeyBox.DRIVERS_LICENSE) >= 0 && box != KeyBox.OFFICIAL_NOTE) {
                column.add(field(box));
            }
        }
        column.add(statements, new H2("At the table, and the envelope"));
        chosen.values().forEach(column::add);
        column.add(field(KeyBox.OFFICIAL_NOTE));
        return column;
    }

    private TypedField field(KeyBox box) {
        return Objects.requireNonNull(typed.get(box), "the form has every box").field();
    }

    /** What stands in every box, right or not. */
    Map<String, String> boxes() {
        Map<String, String> boxes = new LinkedHashMap<>();
        typed.values().forEach(box -> box.into(boxes));
        chosen.forEach((choice, field) -> boxes.put(choice.code(), field.code()));
        statements.into(boxes);
        return boxes;
    }

    void fill(Map<String, String> boxes) {
        typed.values().forEach(box -> box.from(boxes));
        chosen.forEach((choice, field) -> field.code(boxes.getOrDefault(
                choice.code(), choice.choices().keySet().iterator().next())));
        statements.from(boxes);
    }

    /** Says beside each box what is wrong, and leads the keyboard to the first. */
    void problems(Map<String, String> problems) {
        typed.forEach((box, field) -> field.field().problem(problems.getOrDefault(box.code(), "")));
        statements.problem(problems.getOrDefault(ReadBoxes.STATEMENTS, ""));
        typed.entrySet().stream()
                .filter(one -> problems.containsKey(one.getKey().code()))
                .findFirst()
                .ifPresent(one -> one.getValue().field().focus());
    }

    void focusFirst() {
        field(KeyBox.LAST_NAME).focus();
    }
}
