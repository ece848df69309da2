package org.proviso.ui.field;

import com.vaadin.flow.component.Component;
import org.proviso.core.EnvelopeNumber;

/** Which case, in which version, stands on the screen: {@code 000417@5}. */
public record CaseVersionMark(EnvelopeNumber envelopeNo, int version) {

    /** The mark as the page carries it. */
    public String text() {
        return envelopeNo + "@" + version;
    }

    /** Marks the part of the page that shows the case. */
    public void on(Component part) {
        part.getElement().setAttribute("data-case", text());
    }

    /** Whether the case that was pressed is the case shown. */
    public boolean is(String pressed) {
        return text().equals(pressed);
    }
}
