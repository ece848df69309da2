package org.proviso.ui.field;

import com.vaadin.flow.component.html.Span;
import org.jspecify.annotations.Nullable;

/**
 * A question about what stands in a field, asked beside it: the person keeps it, which marks the field, or enters
 * something else. What was kept is not asked again while it stands there and the question is the same.
 */
final class FieldQuestion extends Span {

    private final Span words = new Span();
    private final String label;
    private @Nullable String asked;
    private @Nullable String kept;
    private String about = "";

    FieldQuestion(String name, String label) {
        this.label = label;
        setId(name + "-question");
        addClassName("question");
        getElement().setAttribute("role", "status");
    }

    /**
     * Asks, unless that was kept before; {@code then} is what else keeping it does. A question that is open already stays as
     * it is: a press on its button leaves the field, which asks again, and a new button would not have been pressed.
     */
    void ask(String text, String question, String keepWords, String mark, Runnable then) {
        if (isOpenAbout(text) && about.equals(question)) {
            return;
        }
        boolean sameAsBefore = about.isEmpty() || about.equals(question);
        if (text.equals(kept) && sameAsBefore) {
            return;
        }
        about = question;
        asked = text;
        kept = null;
        show(question);
        ActButton keep = new ActButton(keepWords).quiet().does(() -> {
            mark(text, mark);
            then.run();
        });
        keep.setAriaLabel(keepWords + ": " + label);
        add(keep);
    }

    /** Marks what stands in the field, as kept. */
    void mark(String text, String mark) {
        asked = null;
        kept = text;
        show(mark);
    }

    /** Nothing is asked and nothing was kept. */
    void forget() {
        asked = null;
        kept = null;
        about = "";
        show("");
    }

    private void show(String text) {
        removeAll();
        if (!text.isEmpty()) {
            words.setText(text);
            add(words);
        }
    }

    boolean isOpen() {
        return asked != null;
    }

    boolean isOpenAbout(String text) {
        return text.equals(asked);
    }

    boolean isKept(String text) {
        return text.equals(kept);
    }
}
