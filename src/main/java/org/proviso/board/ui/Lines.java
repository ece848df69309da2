package org.proviso.board.ui;

import org.proviso.ui.ActButton;

/** Buttons next to an envelope, each with its number for screen readers. */
final class Lines {

    private Lines() {}

    static ActButton button(String words, String envelopeNo, Runnable act) {
        ActButton button = new ActButton(words).does(act);
        button.getElement().setAttribute("aria-label", words.replace("…", "") + " " + envelopeNo);
        return button;
    }
}
