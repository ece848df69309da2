package org.proviso.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;

/** The head of a page: its only first-level heading, a sentence under it, and at the right the page's own buttons and links. */
public final class PageHead extends Div {

    private final H1 title = new H1();
    private final Paragraph lead = new Paragraph();
    private final Div aside = new Div();

    public PageHead(String title, String lead) {
        addClassName("head");
        this.title.setText(title);
        this.title.getElement().setAttribute("tabindex", "-1");
        this.lead.addClassName("soft");
        aside.addClassName("aside");
        say(lead);
        add(new Div(this.title, this.lead), aside);
    }

    /** Replaces the sentence under the title. */
    public void say(String words) {
        lead.setText(words);
        lead.setVisible(!words.isEmpty());
    }

    /** Moves the focus to the top of what was just loaded. */
    public void focusTitle() {
        title.getElement().callJsFunction("focus");
    }

    /** Puts something at the right. */
    public PageHead beside(Component... parts) {
        aside.add(parts);
        return this;
    }
}
