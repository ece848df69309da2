package org.proviso.today.setup;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import java.time.LocalDateTime;
import java.util.List;
import org.proviso.access.NotPermittedException;
import org.proviso.review.NewerFileService;
import org.proviso.review.WaitingList;
import org.proviso.roll.SnapshotService;
import org.proviso.roll.Staged;
import org.proviso.ui.ActButton;
import org.proviso.ui.Asking;
import org.proviso.ui.ElectionLine;
import org.proviso.ui.Said;
import org.proviso.ui.UsDates;

/** Newer lists that change decided cases and wait for a second person to confirm them. */
final class WaitingPart extends Div {

    private final transient SnapshotService lists;
    private final transient NewerFileService newer;
    private final ElectionLine election;
    private final Runnable after;

    WaitingPart(SnapshotService lists, NewerFileService newer, ElectionLine election, Runnable after) {
        this.lists = lists;
        this.newer = newer;
        this.election = election;
        this.after = after;
        List<WaitingList> waiting = newer.waiting(election.id());
        if (!waiting.isEmpty()) {
            add(new H2("Waiting for a second person"));
        }
        waiting.forEach(this::show);
    }

    private void show(WaitingList one) {
        Staged staged = lists.staged(election.id(), one.snapshotNo());
        Paragraph line = new Paragraph(ListsPart.words(staged.kind()) + ", list " + one.snapshotNo() + ", uploaded by "
                + one.broughtBy() + " on "
                + UsDates.moment(LocalDateTime.ofInstant(one.broughtAt(), election.zone()))
                + ", changes decided cases. ");
        line.addClassName("warn");
        line.add(new ActButton("Review and confirm").quiet().does(() -> ask(one)));
        add(line);
    }

    private void ask(WaitingList one) {
        Asking[] sheet = new Asking[1];
        sheet[0] = new Asking("Confirm list " + one.snapshotNo(), "Put list in use", () -> {
            try {
                newer.confirm(election.id(), one.snapshotNo());
            } catch (NotPermittedException e) {
                return sheet[0].refuse(String.valueOf(e.getMessage()));
            }
            Said.done("List " + one.snapshotNo() + " is in use.");
            after.run();
            return true;
        });
        sheet[0].with(new ChangedCases(newer.wouldChange(election.id(), one.snapshotNo())));
        sheet[0].setWidth("52rem");
        sheet[0].open();
    }
}
