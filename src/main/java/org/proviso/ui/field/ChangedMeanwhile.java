package org.proviso.ui.field;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import org.springframework.dao.OptimisticLockingFailureException;

/**
 * Says that an act was not saved because somebody changed the same thing since the page was opened. What was typed stays
 * on the page, to be copied; the button loads what is there now.
 */
public final class ChangedMeanwhile extends Div {

    /** What every such page and sheet says first. */
    public static final String WORDS = "Not saved. Somebody changed this in the meantime.";

    private final Span words = new Span();

    /** {@code load} shows the page as it is now. */
    public ChangedMeanwhile(Runnable load) {
        addClassNames("problem", "changed");
        getElement().setAttribute("role", "alert");
        add(words, new ActButton("Load the new version").does(load));
        setVisible(false);
    }

    /** With the page on which it stands loaded anew. */
    public ChangedMeanwhile() {
        this(ChangedMeanwhile::loadPage);
    }

    /** Loads the page anew, as it is now. */
    static void loadPage() {
        UI.getCurrent().refreshCurrentRoute(false);
    }

    public void tell(OptimisticLockingFailureException changed) {
        words.setText(WORDS + " " + changed.getMessage() + " What you typed is still here.");
        setVisible(true);
    }

    public void nothing() {
        setVisible(false);
    }
}
