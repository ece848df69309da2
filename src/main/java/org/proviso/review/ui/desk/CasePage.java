package org.proviso.review.ui.desk;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import org.proviso.review.CaseState;
import org.proviso.review.file.CaseFile;
import org.proviso.review.ui.ends.EndReviewFoot;

/** A case page: head, three parts from left to right, foot. */
public final class CasePage extends Div {

    private final CaseHead head;
    private final CaseLawPart law;

    /** {@code beside} is shown at the right of the head. */
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

    /** The case as shown for second review. */
    public static CasePage forSecondReader(CasePageContext desk, Component... beside) {
        Component foot = desk.file()
                .work()
                .end()
                .waits()
                .filter(proposed -> desk.file().now().state() == CaseState.PROPOSED)
                .<Component>map(
                        proposed -> new EndReviewFoot(proposed, desk.acts().endings(), desk::onLastSheet))
                .orElseGet(() -> new SecondReviewFoot(desk));
        return new CasePage(beside, desk, foot);
    }

    private static Component notes(CasePageContext desk) {
        return new ColleagueNotes(desk);
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
