package org.proviso.review.ui.notes;

import com.vaadin.flow.component.textfield.TextArea;
import java.util.function.Function;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.review.EnvelopeCase;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActDialog;

/** Writes a note on a case, or corrects one. Everybody who has the case before them reads it. */
final class NoteSheet {

    private final TextArea words = new TextArea("Note");
    private final ActDialog sheet;

    /** {@code before} is what the note to be corrected says; empty for a new one. */
    NoteSheet(
            EnvelopeNumber envelopeNo,
            String before,
            Function<String, ActResult<EnvelopeCase>> writing,
            Runnable then) {
        boolean correcting = !before.isEmpty();
        words.setWidthFull();
        words.setMinRows(2);
        words.setMaxRows(8);
        words.setMaxLength(4_000);
        words.setValue(before);
        sheet = new ActDialog(
                (correcting ? "Correct note on envelope " : "Note on envelope ") + envelopeNo,
                correcting ? "Save correction" : "Save note",
                () -> write(writing, then));
        sheet.with(
                correcting
                        ? "What the note says now stays readable."
                        : "Everybody who works on this case reads it. It changes no answer and cannot be deleted.");
        sheet.with(words);
    }

    void open() {
        sheet.open();
    }

    private boolean write(Function<String, ActResult<EnvelopeCase>> writing, Runnable then) {
        if (writing.apply(words.getValue()) instanceof ActResult.Refused<EnvelopeCase> refused) {
            return sheet.refuse(refused.words());
        }
        then.run();
        MessageLine.done("Note saved.");
        return true;
    }
}
