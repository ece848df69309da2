package org.proviso.ui.frame;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import org.proviso.ui.Links;

/** The content of an error page: what is wrong, and where to go. */
public final class ErrorPage extends Div {

    public ErrorPage() {
        addClassName("sheet");
    }

    void say(String title, String why) {
        removeAll();
        add(new H1(title), new Paragraph(why), new Paragraph(Links.link("Go to Today", "")));
    }
}
