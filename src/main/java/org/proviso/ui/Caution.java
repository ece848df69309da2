package org.proviso.ui;

import com.vaadin.flow.component.html.Paragraph;

/** The caution shown wherever something is decided. */
public final class Caution extends Paragraph {

    public Caution() {
        super("People decide; Proviso only recommends. The rules are illustrative: check with counsel; local law"
                + " governs.");
        addClassName("caution");
    }
}
