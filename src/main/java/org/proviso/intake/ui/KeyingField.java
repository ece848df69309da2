package org.proviso.intake.ui;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.proviso.core.Envelope.FieldState;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.Choice;
import org.proviso.ui.field.TypedDates;
import org.proviso.ui.field.TypedField;

/**
 * One typed box of the keying form. Of those whose state is kept, a lone {@code -} marks the box left blank, {@code ?}
 * illegible, {@code !} refused; the list behind it says the same.
 */
final class KeyingField {

    private static final Map<String, FieldState> MARKS =
            Map.of("-", FieldState.LEFT_BLANK, "?", FieldState.ILLEGIBLE, "!", FieldState.REFUSED);

    private static final String AS_TYPED = "Kept as typed.";

    private final KeyingBox box;
    private final TypedField field;
    private final Choice state;
    private final Supplier<LocalDate> today;
    private final Runnable changed;

    KeyingField(KeyingBox box, Supplier<LocalDate> today, Runnable changed) {
        this.box = box;
        this.today = today;
        this.changed = changed;
        field = new TypedField(box.code(), box.label()).like(box.example());
        state = states(box.label());
        if (box.field().isPresent()) {
            field.beside(state);
        }
        field.onTyped(text -> {
            marked(text);
            changed.run();
        });
        field.onLeave(this::tidy);
        state.onChosen(code -> changed.run());
    }

    /** The list that says why a field is empty. */
    static Choice states(String label) {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("keyed", "keyed");
        words.put("left_blank", "blank -");
        words.put("illegible", "illegible ?");
        words.put("refused", "refused !");
        Choice state = new Choice(words);
        state.addClassName("state");
        state.getElement().setAttribute("data-aside", true);
        state.getElement().setAttribute("aria-label", "Status of " + label);
        return state;
    }

    TypedField field() {
        return field;
    }

    private void marked(String text) {
        FieldState mark = MARKS.get(text);
        if (box.field().isEmpty()) {
            return;
        }
        if (mark != null) {
            field.text("");
            state.setValue(mark.code());
        } else if (!text.isEmpty() && !state.getValue().equals(FieldState.ILLEGIBLE.code())) {
            state.setValue(FieldState.KEYED.code());
        }
    }

    /** Shows a date in the usual form, and says at once what cannot be, or asks about what is unlikely. */
    private void tidy() {
        String text = field.text();
        if (box.isDate()) {
            TypedDates.day(text).ifPresent(day -> field.text(UsDates.digits(day)));
        }
        field.problem(text.isEmpty() ? "" : KeyingFormReader.problem(box, text, today.get()));
        ask();
    }

    /** Asks about what stands there, where that is unlikely; whether it waits for an answer. */
    boolean ask() {
        String question = KeyingFormReader.question(box, field.text(), today.get());
        if (question.isEmpty()) {
            field.question("");
        } else {
            field.question(question, "Keep it", AS_TYPED, changed);
        }
        return field.isAsking();
    }

    void into(Map<String, String> boxes) {
        boxes.put(box.code(), field.text());
        if (box.field().isPresent()) {
            boxes.put(box.code() + KeyingFormReader.STATE, state.getValue());
        }
        if (field.isKept()) {
            boxes.put(box.code() + KeyingFormReader.KEPT, "yes");
        }
    }

    void from(Map<String, String> boxes) {
        String text = boxes.getOrDefault(box.code(), "");
        field.text(box.isDate() ? TypedDates.day(text).map(UsDates::digits).orElse(text) : text);
        state.setValue(boxes.getOrDefault(box.code() + KeyingFormReader.STATE, FieldState.KEYED.code()));
        boolean isAsked =
                !KeyingFormReader.question(box, field.text(), today.get()).isEmpty();
        if (isAsked && boxes.containsKey(box.code() + KeyingFormReader.KEPT)) {
            field.mark(AS_TYPED);
        }
    }
}
