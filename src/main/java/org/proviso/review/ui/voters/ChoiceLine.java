package org.proviso.review.ui.voters;

import com.vaadin.flow.component.html.Paragraph;
import org.proviso.review.file.CaseFile;
import org.proviso.ui.UsDates;

/** Who settled whose envelope it is, when, and on what ground, for everybody who reads the case after them. */
public final class ChoiceLine extends Paragraph {

    public ChoiceLine(CaseFile.Choice choice) {
        addClassName("given");
        String who = choice.by() + ", " + UsDates.near(choice.at());
        setText(
                choice.ground().isBlank()
                        ? "Link confirmed by " + who + "."
                        : "Voter chosen by " + who + ": \u201C" + choice.ground() + "\u201D");
    }
}
