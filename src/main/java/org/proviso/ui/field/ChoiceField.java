package org.proviso.ui.field;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeLabel;
import com.vaadin.flow.component.html.Span;
import java.util.Map;
import java.util.function.Consumer;

/** A field that takes one of a few choices. Typing the first letter selects one. */
public final class ChoiceField extends Div {

    private final Choice choice;

    /** The name is unique on the page. Choices map each code to its words. */
    public ChoiceField(String name, String label, Map<String, String> choices) {
        addClassName("typed");
        choice = new Choice(choices);
        choice.setId(name);
        NativeLabel words = new NativeLabel(label);
        words.setFor(name);
        Span row = new Span(choice);
        row.addClassName("entry");
        add(words, row);
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

    public void focus() {
        choice.getElement().executeJs("setTimeout(() => { this.focus(); this.select?.(); })");
    }
}
