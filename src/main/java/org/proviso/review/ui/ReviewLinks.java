package org.proviso.review.ui;

import com.vaadin.flow.component.html.Nav;
import org.proviso.ui.Links;

/** The menu of Review. */
final class ReviewLinks extends Nav {

    ReviewLinks() {
        addClassName("ways");
        getElement().setAttribute("aria-label", "Review menu");
        add(
                Links.link("Queue", "review"),
                Links.link("Second review", "review/second"),
                Links.link("Signatures", "review/signatures"),
                Links.link("Confirm sure links", "review/links"));
    }
}
