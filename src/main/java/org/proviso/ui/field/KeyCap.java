package org.proviso.ui.field;

import com.vaadin.flow.component.html.Span;

/** A keyboard shortcut as drawn next to its button. Screen readers get it from the button itself. */
public final class KeyCap extends Span {

    public KeyCap(String key) {
        super(key.toUpperCase(java.util.Locale.ROOT));
        addClassName("key");
        getElement().setAttribute("aria-hidden", "true");
    }
}
