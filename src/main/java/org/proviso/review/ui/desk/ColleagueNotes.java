package org.proviso.review.ui.desk;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import org.proviso.access.Permission;
import org.proviso.review.facts.ResearchRequest;
import org.proviso.review.file.CaseFile;
import org.proviso.review.file.SearchSummary;
import org.proviso.review.ui.notes.NoteLines;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;

/** What colleagues say about the case: why it came back, notes, research requests and results, searches. */
final class ColleagueNotes extends Div {

    ColleagueNotes(CasePageContext desk) {
        addClassName("notes");
        CaseFile.Casework work = desk.file().work();
        work.cameBack().forEach(this::cameBack);
        boolean writes = !desk.isPaper() && desk.acts().access().isPermitted(Permission.WRITE_NOTES);
        NoteLines notes = new NoteLines(
                desk.key(), desk.file().around().county(), desk.acts().notes(), desk::again);
        notes.lines(work.notes(), writes ? desk.acts().access().signedIn().userName() : null)
                .forEach(this::add);
        work.requests().forEach(request -> research(desk, request));
        work.searches().forEach(this::search);
        if (work.rulesChangedSince()) {
            line("This case was decided under rules no longer in force. The decision stands until people reopen it."
                    + " Setup, Change rule pack lists these cases.");
        }
        setClassName("bare", getComponentCount() == 0);
        if (writes) {
            add(new Div(notes.button()));
        }
        setVisible(getComponentCount() > 0);
    }

    /** Why it came back, in the words typed; it stays here whatever happens next. */
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
