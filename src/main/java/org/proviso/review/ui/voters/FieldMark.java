package org.proviso.review.ui.voters;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import org.proviso.review.file.FieldBeside;

/** What a record says in one field, and in a mark and a word whether the envelope says the same. */
public final class FieldMark extends Div {

    public FieldMark(FieldBeside field) {
        addClassName("beside-field");
        Span words = new Span(field.onRecord().isBlank() ? "empty" : field.onRecord());
        words.setClassName("num", field.field() == FieldBeside.Field.BIRTH_DATE);
        add(words, mark(field.likeness()));
    }

    private static Span mark(FieldBeside.Likeness likeness) {
        Span mark = new Span(
                switch (likeness) {
                    case SAME -> "= same";
                    case DIFFERS -> "\u2260 differs";
                    case NOT_COMPARED -> "? not compared";
                });
        mark.addClassName("likeness");
        mark.setClassName("differs", likeness == FieldBeside.Likeness.DIFFERS);
        return mark;
    }
}
