package org.proviso.ui.field;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Focusable;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import java.util.function.BooleanSupplier;
import org.springframework.dao.OptimisticLockingFailureException;

/**
 * A dialog that asks for something before an act. Escape closes it without saving. Where somebody changed the same thing
 * meanwhile, it stays open with what was typed, says so, and can load the page as it is now.
 */
public final class ActDialog extends Dialog {

    private final Div problem = new Div();
    private final ChangedMeanwhile changed = new ChangedMeanwhile(this::load);
    private final ActButton act;

    /** {@code act} says what its button does; it returns whether the sheet may close. */
    public ActDialog(String title, String actWords, BooleanSupplier act) {
        setHeaderTitle(title);
        addClassName("asking");
        setWidth("34rem");
        setCloseOnOutsideClick(false);
        problem.addClassName("problem");
        problem.getElement().setAttribute("role", "alert");
        this.act = new ActButton(actWords).first().does(() -> act(act));
        getFooter().add(new ActButton("Cancel").does(this::close), this.act);
        add(problem, changed);
    }

    /** A second way to finish: what its button does, handled like the first. */
    public ActDialog or(String actWords, BooleanSupplier doing) {
        getFooter().add(new ActButton(actWords).does(() -> act(doing)));
        return this;
    }

    private void act(BooleanSupplier doing) {
        problem.setText("");
        changed.nothing();
        try {
            if (doing.getAsBoolean()) {
                close();
            }
        } catch (OptimisticLockingFailureException e) {
            changed.tell(e);
        }
    }

    private void load() {
        close();
        ChangedMeanwhile.loadPage();
    }

    /** Puts words or fields on the sheet. */
    public ActDialog with(Component... parts) {
        add(parts);
        return this;
    }

    public ActDialog with(String words) {
        add(new Paragraph(words));
        return this;
    }

    /** Says at the box what is wrong with it, and goes there. Always false, for the act to return. */
    public static <F extends Component & HasValidation> boolean refuse(F box, String words) {
        box.setErrorMessage(words);
        box.setInvalid(true);
        if (box instanceof Focusable<?> found) {
            found.focus();
        }
        return false;
    }

    /** Shows why the act was refused. Always false, for the act to return. */
    public boolean refuse(String words) {
        problem.setText(words);
        return false;
    }
}
