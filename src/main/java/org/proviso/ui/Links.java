package org.proviso.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Span;
import org.proviso.ui.field.KeyCap;

/** Links within the program. */
public final class Links {

    private Links() {}

    /** A link to a page of the program, without a full page load. */
    public static Anchor link(String words, String path) {
        return new Anchor("/" + path, words);
    }

    /** A link with the key that follows it. */
    public static Anchor link(String words, String path, String key) {
        Anchor link = link("", path);
        link.add(new Span(words), new KeyCap(key));
        link.getElement().setAttribute("data-key", key.toLowerCase(java.util.Locale.ROOT));
        link.getElement().setAttribute("aria-keyshortcuts", key);
        return link;
    }
}
