package org.proviso.ui;

import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Span;
import org.proviso.core.Election;
import org.proviso.ui.field.KeyCap;

/** Links within the program, and to a telephone. */
public final class Links {

    private Links() {}

    /** A link to a page of the program, without a full page load. */
    public static Anchor link(String words, String path) {
        return new Anchor("/" + path, words);
    }

    /** Words in which the office's phone number can be called, as often as they name it. */
    public static Span withPhone(String words, Election.Office office) {
        Span said = new Span();
        for (String piece : office.aroundPhone(words)) {
            said.add(piece.equals(office.phone()) ? new Anchor(office.call(), piece) : new Text(piece));
        }
        return said;
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
