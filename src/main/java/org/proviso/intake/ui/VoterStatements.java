package org.proviso.intake.ui;

import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.proviso.core.Envelope.FieldState;
import org.proviso.ui.field.Choice;

/** The statements the voter checked, with the state of the whole row. */
final class VoterStatements extends Div {

    private static final Map<String, String> WORDS = new LinkedHashMap<>();

    static {
        WORDS.put("citizen", "citizen");
        WORDS.put("resident", "resident");
        WORDS.put("not_voted", "not voted");
    }

    private final Map<String, Checkbox> ticks = new LinkedHashMap<>();
    private final List<String> others = new ArrayList<>();
    private final Choice state = KeyingField.states("statements checked");
    private final Span problem = new Span();

    VoterStatements(Runnable changed) {
        addClassName("typed");
        getElement().setAttribute("role", "group");
        getElement().setAttribute("aria-label", "Statements checked");
        Span row = new Span();
        row.addClassName("entry");
        WORDS.forEach((code, words) -> {
            Checkbox tick = new Checkbox(words);
            tick.addValueChangeListener(event -> {
                if (event.isFromClient()) {
                    changed.run();
                }
            });
            ticks.put(code, tick);
            row.add(tick);
        });
        row.add(state);
        state.onChosen(code -> changed.run());
        problem.addClassName("wrong");
        Span label = new Span("Checked");
        label.addClassName("label");
        add(label, row, problem);
    }

    void problem(String words) {
        problem.setText(words);
    }

    void into(Map<String, String> boxes) {
        List<String> ticked = new ArrayList<>(others);
        ticks.forEach((code, tick) -> {
            if (tick.getValue()) {
                ticked.add(code);
            }
        });
        boxes.put(KeyingFormReader.STATEMENTS, String.join(";", ticked));
        boxes.put(KeyingFormReader.STATEMENTS + KeyingFormReader.STATE, state.getValue());
    }

    void from(Map<String, String> boxes) {
        List<String> ticked =
                List.of(boxes.getOrDefault(KeyingFormReader.STATEMENTS, "").split(";"));
        ticks.forEach((code, tick) -> tick.setValue(ticked.contains(code)));
        others.clear();
        ticked.stream()
                .filter(code -> !code.isBlank() && !ticks.containsKey(code))
                .forEach(others::add);
        state.setValue(
                boxes.getOrDefault(KeyingFormReader.STATEMENTS + KeyingFormReader.STATE, FieldState.KEYED.code()));
    }
}
