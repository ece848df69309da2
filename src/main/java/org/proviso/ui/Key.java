package org.proviso.ui;

import com.vaadin.flow.component.html.Span;

/** A keyboard shortcut as drawn next to its button. Screen readers get it from the button itself. */
public final class Key extends Span {

    public Key(String key) {
        super(key.toUpperCase(java.util.Locale.ROOT));
        addClassName("key");
        getElement().setAttribute("aria-hidden", "true");
    }
}
