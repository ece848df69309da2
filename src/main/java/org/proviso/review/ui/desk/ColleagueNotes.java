package org.proviso.review.ui.desk;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import org.proviso.review.CaseState;
import org.proviso.review.facts.ResearchRequest;
import org.proviso.review.file.CaseFile;
import org.proviso.review.file.SearchSummary;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;

/** Notes on the case: a proposal sent back with its note, research requests and results, searches. */
final class ColleagueNotes extends Div {

    ColleagueNotes(CasePageContext desk) {
        addClassName("notes");
        CaseFile.Casework work = desk.file().work();
        boolean back =
                desk.file().now().state() == CaseState.OPEN || desk.file().now().state() == CaseState.IN_REVIEW;
        work.proposed()
                .filter(proposed -> back)
                .flatMap(proposed -> proposed.second())
                .filter(second -> !second.agrees())
                .ifPresent(second -> line(second.by() + " sent the proposal back: \u201C" + second.note() + "\u201D"));
        work.end()
                .proposed()
                .filter(proposed -> back && !proposed.proposal().note().isEmpty())
                .ifPresent(proposed -> line(proposed.readBy() + " sent the proposal back: \u201C"
                        + proposed.proposal().note() + "\u201D"));
        work.cameBack().filter(cameBack -> back).ifPresent(this::cameBack);
        work.requests().forEach(request -> research(desk, request));
        work.searches().forEach(this::search);
        if (work.rulesChangedSince()) {
            line("This case was decided under rules no longer in force. The decision stands until people reopen it."
                    + " Setup, Change rule pack lists these cases.");
        }
        setVisible(getComponentCount() > 0);
    }

    /** Why it is here again, in the words typed. */
    private void cameBack(CaseFile.ReturnDetails cameBack) {
        String by = cameBack.by().isEmpty() ? "" : ", by " + cameBack.by();
        String because = cameBack.because().isEmpty() ? "" : ": \u201C" + cameBack.because() + "\u201D";
        line(cameBack.kind().words() + " (" + UsDates.near(cameBack.at()) + by + ")" + because);
    }

    private Div line(String words) {
        Div line = new Div(new Span(words));
        add(line);
        return line;
    }

    private void research(CasePageContext desk, ResearchRequest request) {
        String found = request.found();
        Div line = line("Research requested" + of(request) + ": " + request.asked()
                + (found == null ? "" : " Result: " + found));
        if (found == null && desk.mayWork()) {
            line.add(new ActButton("Record research result")
                    .quiet()
                    .does(() -> new ResearchSheet.ResearchAnswerSheet(desk, request).open()));
        }
    }

    private static String of(ResearchRequest request) {
        return request.addressee().isEmpty() ? "" : " from " + request.addressee();
    }

    private void search(SearchSummary search) {
        String note = search.note().isBlank() ? "" : " \u201C" + search.note() + "\u201D";
        line("Searched " + UsDates.near(search.at()) + " by " + search.by() + ": "
                + search.found().words() + "." + note
                + (search.takenBackBecause().isEmpty() ? "" : " Taken back: " + search.takenBackBecause()));
    }
}
