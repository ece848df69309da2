package org.proviso.setup;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import java.time.LocalDateTime;
import java.util.List;
import org.proviso.access.NotPermittedException;
import org.proviso.review.news.NewListResult;
import org.proviso.review.news.NewerFileService;
import org.proviso.review.news.UnconfirmedList;
import org.proviso.roll.ListReadService;
import org.proviso.roll.StagedList;
import org.proviso.setup.aside.SetAsideChoice;
import org.proviso.setup.aside.SetAsideTable;
import org.proviso.ui.MessageLine;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ActDialog;
import org.proviso.ui.frame.ElectionLine;

/** Newer lists that change decided cases and wait for a second person to confirm them. */
final class UnconfirmedListsPart extends Div {

    private final transient ListReadService lists;
    private final transient NewerFileService newer;
    private final ElectionLine election;
    private final Runnable after;

    UnconfirmedListsPart(ListReadService lists, NewerFileService newer, ElectionLine election, Runnable after) {
        this.lists = lists;
        this.newer = newer;
        this.election = election;
        this.after = after;
        List<UnconfirmedList> waiting = newer.waiting(election.id());
        if (!waiting.isEmpty()) {
            add(new H2("Waiting for a second person"));
        }
        waiting.forEach(this::show);
    }

    private void show(UnconfirmedList list) {
        StagedList staged = lists.staged(election.id(), list.snapshotNo());
        Paragraph line = new Paragraph(ListsPart.words(staged.kind()) + ", list " + list.snapshotNo() + ", uploaded by "
                + list.broughtBy() + " on "
                + UsDates.moment(LocalDateTime.ofInstant(list.broughtAt(), election.zone()))
                + ", " + why(staged) + ". ");
        line.addClassName("warn");
        line.add(new ActButton("Review and confirm").quiet().does(() -> ask(list)));
        add(line);
    }

    private static String why(StagedList staged) {
        return staged.aside().isEmpty()
                ? "changes decided cases"
                : "leaves out " + UsDates.count(staged.aside().rowsAside(), "row") + " that could not be read";
    }

    private void addAside(ActDialog sheet, StagedList staged) {
        if (!staged.aside().isEmpty()) {
            sheet.with(UsDates.count(staged.aside().rowsAside(), "row") + " could not be read. "
                            + SetAsideChoice.atStake(staged.kind()))
                    .with("Reason given: " + staged.aside().because())
                    .with(new SetAsideTable(
                            lists,
                            election.id(),
                            staged.snapshotNo(),
                            staged.aside().rowsAside()));
        }
    }

    private void ask(UnconfirmedList list) {
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog("Confirm list " + list.snapshotNo(), "Put list in use", () -> {
            try {
                if (newer.confirm(election.id(), list.snapshotNo()) instanceof NewListResult.Refused refused) {
                    return sheet[0].refuse(refused.refusal().words());
                }
            } catch (NotPermittedException e) {
                return sheet[0].refuse(String.valueOf(e.getMessage()));
            }
            MessageLine.done("List " + list.snapshotNo() + " is in use.");
            after.run();
            return true;
        });
        addAside(sheet[0], lists.staged(election.id(), list.snapshotNo()));
        sheet[0].with(new ChangedCases(election.id(), () -> newer.wouldChange(election.id(), list.snapshotNo())));
        sheet[0].setWidth("52rem");
        sheet[0].open();
    }
}
