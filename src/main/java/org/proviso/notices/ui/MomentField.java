package org.proviso.notices.ui;

import com.vaadin.flow.component.datetimepicker.DateTimePicker;
import java.time.LocalDateTime;
import java.util.Locale;
import org.proviso.core.act.ActResult;
import org.proviso.ui.field.ActDialog;

/** A date and time to log, now at first. What is wrong with it is said at its box. */
final class MomentField extends DateTimePicker {

    private final String field;

    /** {@code field} is what the command calls it. */
    MomentField(String label, String field, LocalDateTime now) {
        super(label);
        this.field = field;
        setLocale(Locale.US);
        setDateAriaLabel("Date");
        setTimeAriaLabel("Time");
        setValue(now.withSecond(0).withNano(0));
    }

    /** Always false, for the act to return. */
    boolean refuse(String words) {
        setErrorMessage(words);
        setInvalid(true);
        return false;
    }

    /** Says why the act was refused: here where it is about this box, on the sheet otherwise. */
    boolean refuse(ActResult.Refused<?> refused, ActDialog sheet) {
        return field.equals(refused.refusals().get(0).field())
                ? refuse(refused.words())
                : sheet.refuse(refused.words());
    }
}
