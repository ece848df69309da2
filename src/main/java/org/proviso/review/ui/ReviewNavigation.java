package org.proviso.review.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Nav;
import java.util.List;
import org.proviso.ui.Links;

/** The menu of Review, which says which of its pages is open. */
public final class ReviewNavigation extends Nav {

    private final List<Anchor> ways = List.of(
            Links.link("Queue", "review"),
            Links.link("Second review", "review/second"),
            Links.link("Signatures", "review/signatures"),
            Links.link("Confirm sure links", "review/links"),
            Links.link("Research", "review/research"),
            Links.link("Sent on", "review/sent-on"),
            Links.link("Mail desk", "review/mail-desk"));

    public ReviewNavigation() {
        addClassName("ways");
        getElement().setAttribute("aria-label", "Review menu");
        ways.forEach(this::add);
    }

    @Override
    protected void onAttach(AttachEvent event) {
        super.onAttach(event);
        String here = "/" + event.getUI().getActiveViewLocation().getPath();
        ways.stream()
                .filter(way -> way.getHref().equals(here))
                .forEach(way -> way.getElement().setAttribute("aria-current", "page"));
    }
}
