package org.proviso.ui.field;

import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Span;
import java.util.Locale;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * A button for an act of the office, with the key that presses it. An act on a case hands over the case and version
 * that stood on the screen when it was pressed ({@link CaseVersionMark}), so that pressing twice never acts on a case that
 * nobody has seen: the static module holds presses back for a moment after another case came on the screen, and the
 * page compares the mark.
 */
public final class ActButton extends NativeButton {

    private static final String SEEN = "element.closest('[data-case]')?.dataset.case ?? ''";

    public ActButton(String words) {
        this(words, null);
    }

    /** With its keyboard shortcut. */
    public ActButton(String words, @Nullable String key) {
        add(new Span(words));
        addClassName("act");
        getElement().setAttribute("type", "button");
        if (key != null) {
            add(new KeyCap(key));
            getElement().setAttribute("data-key", key.toLowerCase(Locale.ROOT));
            getElement().setAttribute("aria-keyshortcuts", key);
        }
    }

    /** The page's main act. */
    public ActButton first() {
        addClassName("first");
        return this;
    }

    /** A quiet button, drawn as a link. */
    public ActButton quiet() {
        addClassName("quiet");
        return this;
    }

    /** An act on the case on the screen: guarded against a second press that was meant for the case before. */
    public ActButton onCase(Consumer<String> act) {
        getElement().setAttribute("data-act", true);
        getElement()
                .addEventListener(
                        "click", event -> act.accept(event.getEventData().getString(SEEN)))
                .addEventData(SEEN);
        return this;
    }

    /** What a button does that is not an act on a case. */
    public ActButton does(Runnable act) {
        addClickListener(event -> act.run());
        return this;
    }
}
