package org.proviso.review.ui.mail;

import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.proviso.review.mail.DeskAnswer;
import org.proviso.review.mail.MailLine;
import org.proviso.ui.field.TypedDates;

/** The day of an answer of the mail desk and who gave it there, and the answers that a line can have. */
final class AnswerFields {

    private final TextField day = line("Day the mail desk answered");
    private final TextField by = line("Answered there by");

    TextField day() {
        return day;
    }

    TextField by() {
        return by;
    }

    /** The day, where both are given; each that is not says so. */
    Optional<LocalDate> given() {
        Optional<LocalDate> on = TypedDates.day(day.getValue());
        day.setErrorMessage(TypedDates.LIKE_A_DAY);
        day.setInvalid(on.isEmpty());
        by.setErrorMessage("Required. Enter who answered at the mail desk.");
        by.setInvalid(by.getValue().isBlank());
        return by.isInvalid() ? Optional.empty() : on;
    }

    static Map<String, String> choices(MailLine.Kind kind) {
        Map<String, String> choices = new LinkedHashMap<>();
        DeskAnswer.to(kind).forEach(answer -> choices.put(answer.code(), answer.words()));
        return choices;
    }

    private static TextField line(String label) {
        TextField line = new TextField(label);
        line.setWidthFull();
        line.setMaxLength(200);
        return line;
    }
}
