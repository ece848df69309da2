package org.proviso.review.ui.desk;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import org.proviso.review.file.CaseFile;

/** A case as it is read: its head, three parts from left to right, its foot. */
public final class CasePage extends Div {

    private final CaseHead head;
    private final CaseLawPart law;

    /** {@code beside} stands at the right of the head. */
    public CasePage(CasePageContext desk, Component... beside) {
        this(beside, desk, new CaseFoot(desk));
    }

    private CasePage(Component[] beside, CasePageContext desk, Component foot) {
        addClassName("case");
        desk.mark().on(this);
        CaseFile file = desk.file();
        head = new CaseHead(file, beside);
        law = new CaseLawPart(desk);
        Div parts = new Div(
                new CaseEnvelopePart(desk, desk.mayWork() && desk.signatureHidden()), new CaseRecordsPart(desk), law);
        parts.addClassName("parts");
        add(head, notes(desk), parts, foot);
    }

    /** The case as a second reader has it. */
    public static CasePage forSecondReader(CasePageContext desk, Component... beside) {
        return new CasePage(beside, desk, new SecondReviewFoot(desk));
    }

    private static Component notes(CasePageContext desk) {
        return new ColleagueNotes(desk);
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
