package org.proviso.intake.keying;

import org.proviso.core.Envelope.FieldState;

/** What one keying has in a box, and the box's state; of a box whose state is not kept it is {@code KEYED}. */
public record KeyedText(String text, FieldState state) {

    static KeyedText of(String text) {
        return new KeyedText(text, FieldState.KEYED);
    }

    /** As it is shown and kept: a box that was not simply keyed says so, such as {@code (illegible)}. */
    public String words() {
        if (state == FieldState.KEYED) {
            return text;
        }
        String why = "(" + state.code().replace('_', ' ') + ")";
        return text.isEmpty() ? why : text + " " + why;
    }
}
