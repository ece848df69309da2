package org.proviso.release.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import org.proviso.core.adjudication.finding.BallotCatalog;
import org.proviso.release.RemakeSheet;
import org.proviso.ui.UsDates;

/** A remake sheet: from which ballot style to which, and the contests to copy. It shows no name and no envelope. */
@Tag("section")
final class RemakeSheetPart extends HtmlContainer {

    RemakeSheetPart(RemakeSheet sheet, BallotCatalog ballots, String who, List<Component> acts) {
        addClassName("remake-sheet");
        add(new H3("Sheet " + sheet.number() + " of batch " + sheet.batchNo() + ": "
                + UsDates.count(sheet.ballots(), "ballot") + " of style " + sheet.styleCast() + " to "
                + (sheet.styleRight().isEmpty() ? "the voter's own style" : "style " + sheet.styleRight())));
        add(new Paragraph("Copy only these contests:"));
        UnorderedList contests = new UnorderedList();
        sheet.contests().stream()
                .map(ballots::contestTitle)
                .sorted()
                .forEach(title -> contests.add(new ListItem(title)));
        Paragraph signing = new Paragraph("Copied by ____________________   Verified by ____________________");
        signing.addClassName("signing");
        Div row = new Div(acts.toArray(Component[]::new));
        row.addClassName("acts");
        add(contests, new Paragraph(who), row, signing);
    }
}
