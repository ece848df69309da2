package org.proviso.review.ui.ends;

import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;

/** Fields of the sheets about ends without a decision. */
final class EndFields {

    private EndFields() {}

    static TextField line(String label) {
        TextField line = new TextField(label);
        line.setWidthFull();
        line.setMaxLength(200);
        return line;
    }

    static TextArea area(String label) {
        TextArea area = new TextArea(label);
        area.setWidthFull();
        area.setMaxLength(4_000);
        return area;
    }

    /** Whether something is entered; where nothing is, the field says so. */
    static boolean given(TextField field, String words) {
        field.setInvalid(field.getValue().isBlank());
        field.setErrorMessage(words);
        return !field.isInvalid();
    }

    /** The same for words of several lines. */
    static boolean given(TextArea field, String words) {
        field.setInvalid(field.getValue().isBlank());
        field.setErrorMessage(words);
        return !field.isInvalid();
    }
}
