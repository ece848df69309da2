package org.proviso.review.ui.desk;

import com.vaadin.flow.component.html.Div;

/** The line next to an act that says why it was refused. It is read aloud when it appears. */
final class RefusalLine extends Div implements RefusalDisplay {

    RefusalLine() {
        addClassName("problem");
        getElement().setAttribute("role", "alert");
    }

    @Override
    public void refuse(String words) {
        setText(words);
    }
}
