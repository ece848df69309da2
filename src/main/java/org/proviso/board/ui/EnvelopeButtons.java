package org.proviso.board.ui;

import org.proviso.ui.field.ActButton;

/** Buttons beside an envelope, each with its number for who hears the page. */
final class EnvelopeButtons {

    private EnvelopeButtons() {}

    static ActButton button(String words, String envelopeNo, Runnable act) {
        ActButton button = new ActButton(words).does(act);
        button.getElement().setAttribute("aria-label", words.replace("…", "") + " " + envelopeNo);
        return button;
    }
}
