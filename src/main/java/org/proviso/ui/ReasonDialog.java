package org.proviso.ui;

import com.vaadin.flow.component.textfield.TextArea;
import java.util.function.Function;
import org.proviso.core.act.ActResult;
import org.proviso.ui.field.ActDialog;

/** A dialog that asks for the reason of an act, which it requires, and says a refusal of the act. */
public final class ReasonDialog {

    private static final int LONGEST_REASON = 1000;

    private final TextArea because = new TextArea("Reason");
    private final ActDialog sheet;

    /** {@code act} is handed the reason; {@code done} is said in the message line once it was done, after {@code then}. */
    public ReasonDialog(
            String title, String actWords, Function<String, ? extends ActResult<?>> act, String done, Runnable then) {
        because.setMaxLength(LONGEST_REASON);
        because.setWidthFull();
        because.setMinRows(2);
        sheet = new ActDialog(title, actWords, () -> act(act, done, then));
    }

    /** Opens it, with what the act does. */
    public void ask(String words) {
        sheet.with(words).with(because).open();
    }

    private boolean act(Function<String, ? extends ActResult<?>> act, String done, Runnable then) {
        String reason = because.getValue().strip();
        because.setInvalid(reason.isEmpty());
        because.setErrorMessage("Required. Your reason is kept with the record.");
        if (reason.isEmpty()) {
            because.focus();
            return false;
        }
        if (act.apply(reason) instanceof ActResult.Refused<?> refused) {
            return sheet.refuse(refused.words());
        }
        then.run();
        MessageLine.done(done);
        return true;
    }
}
