package org.proviso.ui.field;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeLabel;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.function.Consumer;

/**
 * A field that is typed into, its label before it and what is wrong with it beside it in words. What was typed is
 * handed over 400 ms after typing pauses and when the field is left.
 */
public final class TypedField extends Div {

    private static final int PAUSE = 400;

    private final Input input = new Input();
    private final Span problem = new Span();
    private final Span row = new Span();
    private final FieldQuestion question;
    private String problemBefore = "";

    /** The name is unique on the page. */
    public TypedField(String name, String label) {
        addClassNames("typed");
        input.setId(name);
        input.setValueChangeMode(ValueChangeMode.LAZY);
        input.setValueChangeTimeout(PAUSE);
        input.getElement().setAttribute("autocomplete", "off");
        input.getElement().setAttribute("spellcheck", "false");
        input.getElement().setAttribute("aria-describedby", name + "-problem " + name + "-question");
        NativeLabel words = new NativeLabel(label);
        words.setFor(name);
        problem.setId(name + "-problem");
        problem.addClassName("wrong");
        row.addClassName("entry");
        row.add(input);
        question = new FieldQuestion(name, label);
        add(words, row, problem, question);
    }

    /** The field's text, trimmed. */
    public String text() {
        return input.getValue().strip();
    }

    public TypedField text(String text) {
        input.setValue(text);
        return this;
    }

    /** A short example of what is typed. */
    public TypedField like(String example) {
        input.setPlaceholder(example.isEmpty() ? "" : "e.g., " + example);
        return this;
    }

    /** What is mostly typed, to choose from while typing; nothing to choose from leaves the field as it is. */
    public TypedField from(List<String> choices) {
        if (!choices.isEmpty()) {
            String list = input.getId().orElseThrow() + "-list";
            Element offered = new Element("datalist").setAttribute("id", list);
            choices.forEach(choice -> offered.appendChild(new Element("option").setAttribute("value", choice)));
            input.getElement().setAttribute("list", list);
            row.getElement().appendChild(offered);
        }
        return this;
    }

    /** Called with the text a person typed; not called when the page sets the text. */
    public TypedField onTyped(Consumer<String> act) {
        input.addValueChangeListener(event -> {
            if (event.isFromClient()) {
                act.accept(text());
            }
        });
        return this;
    }

    /** Called when the field loses focus. */
    public TypedField onLeave(Runnable act) {
        input.getElement().addEventListener("blur", event -> act.run());
        return this;
    }

    /** Adds a component after the field, in its row. */
    public TypedField beside(com.vaadin.flow.component.Component part) {
        row.add(part);
        return this;
    }

    /** Shows what is wrong; empty clears it. */
    public void problem(String words) {
        if (!words.equals(problemBefore)) {
            problemBefore = words;
            problem.setText(words);
            input.getElement().setAttribute("aria-invalid", String.valueOf(!words.isEmpty()));
        }
    }

    /** Asks whether the text is right; empty words take the question back. */
    public void question(String words) {
        if (words.isEmpty()) {
            forget();
        } else {
            question(words, "Keep it", "Kept as typed.", () -> {});
        }
    }

    /** The same with what the button says, how the field is marked once it is pressed, and what else that does. */
    public void question(String words, String keepWords, String mark, Runnable then) {
        question.ask(text(), words, keepWords, mark, () -> {
            marked();
            focus();
            then.run();
        });
        marked();
    }

    /** Marks the text as kept. */
    public void mark(String mark) {
        question.mark(text(), mark);
        marked();
    }

    private void forget() {
        question.forget();
        marked();
    }

    private void marked() {
        setClassName("asks", question.isOpen());
        setClassName("kept", question.isKept(text()));
    }

    /** Whether a question waits for an answer. */
    public boolean isAsking() {
        return question.isOpen();
    }

    /** Whether what it asks is about the text that stands in the field. */
    public boolean isAskingAboutText() {
        return question.isOpenAbout(text());
    }

    /** Whether the person keeps the text that stands in the field. */
    public boolean isKept() {
        return question.isKept(text());
    }

    public boolean hasProblem() {
        return !problemBefore.isEmpty();
    }

    /** Focuses the field. */
    public void focus() {
        input.getElement().executeJs("setTimeout(() => { this.focus(); this.select?.(); })");
    }
}
