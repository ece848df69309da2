package org.proviso.board.ui;

import org.proviso.core.EnvelopeNumber;
import org.proviso.ui.field.ActButton;

/** Buttons next to an envelope, each with its number for screen readers. */
final class EnvelopeButtons {

    private EnvelopeButtons() {}

    static ActButton button(String words, EnvelopeNumber envelopeNo, Runnable act) {
        ActButton button = new ActButton(words).does(act);
        button.getElement().setAttribute("aria-label", words.replace("…", "") + " " + envelopeNo);
        return button;
    }
}
