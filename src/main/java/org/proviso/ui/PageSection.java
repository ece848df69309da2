package org.proviso.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.H2;

/** A part of a page under its own heading; its name is the theme's, to place it. */
@Tag("section")
public class PageSection extends HtmlContainer {

    public PageSection(String name, String title, Component... content) {
        addClassName(name);
        add(new H2(title));
        add(content);
    }
}
