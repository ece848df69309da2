package org.proviso.ui;

import com.vaadin.flow.component.html.Span;

/**
 * The mark of an outcome beside its word: a full disc for count, a half disc for count in part, an empty ring for
 * reject. The mark is hidden from screen readers; the word says it.
 */
public final class OutcomeMark extends Span {

    /** How a mark is drawn; one shape for each outcome, so that color is never needed to tell them apart. */
    public enum Shape {
        COUNT("full"),
        COUNT_IN_PART("half"),
        REJECT("ring");

        private final String style;

        Shape(String style) {
            this.style = style;
        }
    }

    public OutcomeMark(Shape shape, String word) {
        addClassName("outcome");
        Span mark = new Span();
        mark.addClassNames("mark", shape.style);
        mark.getElement().setAttribute("aria-hidden", "true");
        add(mark, new Span(word));
    }
}
