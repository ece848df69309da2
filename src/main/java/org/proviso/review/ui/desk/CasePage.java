package org.proviso.review.ui.desk;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import org.proviso.review.file.CaseFile;

/** A case as it is read: its head, three parts from left to right, its foot. */
public final class CasePage extends Div {

    private final CaseHead head;
    private final LawAsks law;

    /** {@code beside} stands at the right of the head. */
    public CasePage(Desk desk, Component... beside) {
        this(beside, desk, new CaseFoot(desk));
    }

    private CasePage(Component[] beside, Desk desk, Component foot) {
        addClassName("case");
        desk.mark().on(this);
        CaseFile file = desk.file();
        head = new CaseHead(file, beside);
        law = new LawAsks(desk);
        Div parts =
                new Div(new EnvelopeSays(desk, desk.mayWork() && desk.signatureHidden()), new RecordsSay(desk), law);
        parts.addClassName("parts");
        add(head, notes(desk), parts, foot);
    }

    /** The case as a second reader has it. */
    public static CasePage forSecondReader(Desk desk, Component... beside) {
        return new CasePage(beside, desk, new SecondFoot(desk));
    }

    private static Component notes(Desk desk) {
        return new NoteLines(desk);
    }

    /** Puts the reader at the top of the page. */
    public void focusTitle() {
        head.focusTitle();
    }

    /** After an act: to the next question that needs somebody. */
    public void focusWork() {
        law.focusWork();
    }
}
