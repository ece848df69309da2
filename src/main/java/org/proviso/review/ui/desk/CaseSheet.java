package org.proviso.review.ui.desk;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.function.Predicate;
import org.proviso.ui.field.ActDialog;

/** A sheet over a case that asks for something before an act; a refusal is said on it, in the service's words. */
class CaseSheet {

    private final ActDialog asking;

    /** {@code act} returns whether it was recorded; it says refusals on what it is handed. */
    CaseSheet(String title, String actWords, Predicate<RefusalDisplay> act) {
        ActDialog[] self = new ActDialog[1];
        asking = new ActDialog(title, actWords, () -> act.test(words -> self[0].refuse(words)));
        self[0] = asking;
    }

    void with(Component... parts) {
        asking.with(parts);
    }

    void with(String words) {
        asking.with(words);
    }

    /** As wide as a table of records needs. */
    void wide() {
        asking.setWidth("56rem");
    }

    void open() {
        asking.open();
    }

    /** A field for a few lines of words. */
    static TextArea words(String label) {
        TextArea area = new TextArea(label);
        area.setWidthFull();
        area.setMinRows(2);
        area.setMaxRows(5);
        area.setMaxLength(4_000);
        return area;
    }

    /** Marks a field as required; false, for the act to return. */
    static boolean missing(TextArea area, String words) {
        area.setInvalid(true);
        area.setErrorMessage(words);
        area.focus();
        return false;
    }
}
