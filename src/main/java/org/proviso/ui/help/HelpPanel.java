package org.proviso.ui.help;

import com.vaadin.flow.component.Html;
import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.Shortcuts;
import com.vaadin.flow.component.html.Aside;
import com.vaadin.flow.component.html.Div;
import org.proviso.ui.field.ActButton;

/** Help on the page on the screen, beside it. It stays open from page to page until it is closed. */
public final class HelpPanel extends Aside {

    private final HelpTexts texts;
    private final Div text = new Div();
    private final ActButton button = new ActButton("Help", "H").quiet().does(this::turn);
    private String path = "";

    HelpPanel(HelpTexts texts) {
        this.texts = texts;
        addClassName("help");
        getElement().setAttribute("aria-label", "Help on this page");
        getElement().setAttribute("tabindex", "-1");
        text.addClassName("help-text");
        add(new ActButton("Close help").quiet().does(this::close), text);
        button.getElement().setAttribute("aria-expanded", "false");
        Shortcuts.addShortcutListener(this, this::close, Key.ESCAPE).listenOn(this);
        setVisible(false);
    }

    /** Opens and closes it. */
    public ActButton button() {
        return button;
    }

    /** The page on the screen, by its address. */
    public void at(String path) {
        this.path = path;
        show();
    }

    private void turn() {
        if (isVisible()) {
            close();
            return;
        }
        setVisible(true);
        show();
        button.getElement().setAttribute("aria-expanded", "true");
        getElement().callJsFunction("focus");
    }

    private void close() {
        setVisible(false);
        button.getElement().setAttribute("aria-expanded", "false");
        button.focus();
    }

    private void show() {
        if (isVisible()) {
            text.removeAll();
            text.add(new Html("<div>" + texts.page(path) + "</div>"));
        }
    }
}
