package org.proviso.review.ui;

import com.vaadin.flow.component.html.Nav;
import org.proviso.ui.Links;

/** The menu of Review. */
public final class ReviewNavigation extends Nav {

    public ReviewNavigation() {
        addClassName("ways");
        getElement().setAttribute("aria-label", "Review menu");
        add(
                Links.link("Queue", "review"),
                Links.link("Second review", "review/second"),
                Links.link("Signatures", "review/signatures"),
                Links.link("Confirm sure links", "review/links"),
                Links.link("Research", "review/research"),
                Links.link("Sent on", "review/sent-on"),
                Links.link("Mail desk", "review/mail-desk"));
    }
}
