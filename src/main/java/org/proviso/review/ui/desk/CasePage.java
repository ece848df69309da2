package org.proviso.review.ui.desk;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import org.proviso.review.file.CaseFile;

/** A case page: head, three parts from left to right, foot. */
public final class CasePage extends Div {

    private final CaseHead head;
    private final LawAsks law;

    /** {@code beside} is shown at the right of the head. */
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

    /** The case as shown for second review. */
    public static CasePage forSecondReader(Desk desk, Component... beside) {
        return new CasePage(beside, desk, new SecondFoot(desk));
    }

    private static Component notes(Desk desk) {
        return new NoteLines(desk);
    }

    /** Moves the focus to the top of the page. */
    public void focusTitle() {
        head.focusTitle();
    }

    /** After an act: moves the focus to the next open question. */
    public void focusWork() {
        law.focusWork();
    }
}
