package org.proviso.release.ui;

import com.vaadin.flow.component.textfield.IntegerField;
import java.util.function.IntConsumer;

/** A number that is required before an act. */
final class CountField extends IntegerField {

    CountField(String label) {
        super(label);
        setMin(0);
        setStepButtonsVisible(true);
    }

    void with(IntConsumer act) {
        Integer given = getValue();
        if (given == null) {
            refuse("Required. Enter the number counted, or 0 for none.");
            return;
        }
        act.accept(given);
    }

    /** Shows what is wrong with the number. */
    void refuse(String words) {
        setErrorMessage(words);
        setInvalid(true);
        focus();
    }
}
