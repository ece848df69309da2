package org.proviso.board.ui;

import com.vaadin.flow.component.textfield.TextArea;
import java.util.Optional;
import java.util.function.Function;
import org.proviso.ui.field.ActDialog;

/** Asks for a reason in words before an act. */
final class ReasonSheet {

    private ReasonSheet() {}

    /** {@code act} gives the words of a refusal, if it was refused. */
    static void ask(String title, String says, String label, String button, Function<String, Optional<String>> act) {
        TextArea words = new TextArea(label);
        words.setWidthFull();
        words.setMaxLength(4000);
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog(title, button, () -> {
            if (words.getValue().isBlank()) {
                words.setErrorMessage("Required. Your reason is kept with the record.");
                words.setInvalid(true);
                words.focus();
                return false;
            }
            return act.apply(words.getValue()).map(sheet[0]::refuse).orElse(true);
        });
        sheet[0].addClassName("board-sheet");
        sheet[0].with(says).with(words).open();
    }
}
