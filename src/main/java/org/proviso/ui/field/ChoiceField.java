package org.proviso.ui.field;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeLabel;
import com.vaadin.flow.component.html.Span;
import java.util.Map;
import java.util.function.Consumer;

/** A field that takes one of a few choices. Typing the first letter selects one. */
public final class ChoiceField extends Div {

    private final Choice choice;
    private final FieldQuestion question;

    /** The name is unique on the page. Choices map each code to its words. */
    public ChoiceField(String name, String label, Map<String, String> choices) {
        addClassName("typed");
        choice = new Choice(choices);
        choice.setId(name);
        NativeLabel words = new NativeLabel(label);
        words.setFor(name);
        Span row = new Span(choice);
        row.addClassName("entry");
        question = new FieldQuestion(name, label);
        choice.getElement().setAttribute("aria-describedby", name + "-question");
        add(words, row, question);
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

    /** Called when the field loses focus. */
    public ChoiceField onLeave(Runnable act) {
        choice.getElement().addEventListener("blur", event -> act.run());
        return this;
    }

    /** Asks whether the choice is right, and what keeping it does; empty words take the question back. */
    public void question(String words, Runnable then) {
        if (words.isEmpty()) {
            question.forget();
        } else {
            question.ask(code(), words, "Keep it", "Kept as chosen.", () -> {
                marked();
                focus();
                then.run();
            });
        }
        marked();
    }

    /** Marks the choice as kept. */
    public void keep() {
        question.mark(code(), "Kept as chosen.");
        marked();
    }

    private void marked() {
        setClassName("asks", question.isOpen());
        setClassName("kept", isKept());
    }

    /** Whether a question waits for an answer. */
    public boolean isAsking() {
        return question.isOpen();
    }

    /** Whether the person keeps the choice that stands in the field. */
    public boolean isKept() {
        return question.isKept(code());
    }

    public void focus() {
        choice.getElement().executeJs("setTimeout(() => { this.focus(); this.select?.(); })");
    }
}
