package org.proviso.ui.field;

import com.vaadin.flow.component.html.Span;

/** A key of the keyboard as it is drawn beside what it does. Screen readers hear it from the thing itself. */
public final class KeyCap extends Span {

    public KeyCap(String key) {
        super(key.toUpperCase(java.util.Locale.ROOT));
        addClassName("key");
        getElement().setAttribute("aria-hidden", "true");
    }
}
