package org.proviso.review.ui;

import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.NativeLabel;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.dom.Element;
import java.util.function.IntConsumer;

/** A slider in percent under its label, moved with the mouse or the arrow keys. */
@Tag("label")
final class Slider extends NativeLabel {

    private static final int STEP = 10;
    private static final int SETTLED_MILLIS = 40;

    private final Element input = new Element("input");
    private final Span percent = new Span();

    Slider(String label, int least, int most, int now, IntConsumer moved) {
        addClassName("slider");
        input.setAttribute("type", "range");
        input.setAttribute("min", String.valueOf(least));
        input.setAttribute("max", String.valueOf(most));
        input.setAttribute("step", String.valueOf(STEP));
        input.setAttribute("value", String.valueOf(now));
        percent.addClassName("num");
        add(new Span(label));
        getElement().appendChild(input);
        add(percent);
        input.addEventListener(
                        "input", event -> move((int) event.getEventData().getNumber("Number(element.value)"), moved))
                .addEventData("Number(element.value)")
                .debounce(SETTLED_MILLIS);
        move(now, moved);
    }

    /** As if somebody moved it there. */
    private void move(int now, IntConsumer moved) {
        percent.setText(now + " %");
        input.setAttribute("aria-valuetext", now + " percent");
        moved.accept(now);
    }
}
