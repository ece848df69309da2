package org.proviso.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeLabel;
import com.vaadin.flow.component.html.Span;
import java.util.Map;
import java.util.function.Consumer;

/** A field that takes one of a few choices. Typing the first letter selects one. */
public final class ChoiceField extends Div {

    private final Choice choice;
    private final Span problem = new Span();

    /** The name is unique on the page. Choices map each code to its words. */
    public ChoiceField(String name, String label, Map<String, String> choices) {
        addClassName("typed");
        choice = new Choice(choices);
        choice.setId(name);
        choice.getElement().setAttribute("aria-describedby", name + "-problem");
        NativeLabel words = new NativeLabel(label);
        words.setFor(name);
        problem.setId(name + "-problem");
        problem.addClassName("wrong");
        Span row = new Span(choice);
        row.addClassName("entry");
        add(words, row, problem);
    }

    /** The code of the choice. */
    public String code() {
        return choice.getValue();
    }

    public ChoiceField code(String code) {
        choice.setValue(code);
        return this;
    }

    public ChoiceField onChosen(Consumer<String> act) {
        choice.onChosen(act);
        return this;
    }

    public void problem(String words) {
        problem.setText(words);
        choice.getElement().setAttribute("aria-invalid", String.valueOf(!words.isEmpty()));
    }

    public void focus() {
        choice.getElement().executeJs("setTimeout(() => { this.focus(); this.select?.(); })");
    }
}
