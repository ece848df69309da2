package org.proviso.ui.help;

import org.springframework.stereotype.Component;

/** Makes the panel of help of a window. */
@Component
public final class HelpPanels {

    private final HelpTexts texts;

    HelpPanels(HelpTexts texts) {
        this.texts = texts;
    }

    public HelpPanel panel() {
        return new HelpPanel(texts);
    }
}
