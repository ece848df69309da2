package org.proviso.notices.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.notices.DueNotice;
import org.proviso.notices.NoticeService;
import org.proviso.ui.Links;
import org.proviso.ui.PageHead;
import org.proviso.ui.RowGrid;
import org.proviso.ui.UsDates;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** Voters still to notify, each with the deadline; the first due comes first. */
@Route(value = "notices", layout = OfficeFrame.class)
@PageTitle("Notices · Proviso")
@PermitAll
public final class NoticesView extends Composite<Div> {

    NoticesView(NoticeService notices, WorkingElection workplace) {
        ElectionId election = workplace.electionId();
        List<DueNotice> due = notices.due(election);
        getContent().addClassNames("sheet", "notices");
        PageHead head = new PageHead("Notices", lead(due));
        if (!due.isEmpty()) {
            head.beside(allLetters(election));
        }
        getContent().add(head, list(due));
    }

    private static String lead(List<DueNotice> due) {
        long overdue = due.stream().filter(DueNotice::overdue).count();
        long noAddress = due.stream().filter(one -> !one.to().hasAddress()).count();
        String late = overdue == 0 ? "none overdue" : overdue + " overdue";
        String where = noAddress == 0 ? "" : "; " + noAddress + " without an address, to be notified another way";
        return UsDates.count(due.size(), "letter") + " to send: " + late + where + ".";
    }

    private static Anchor allLetters(ElectionId election) {
        Anchor all = new Anchor("/notices/letters.pdf?election=" + election, "Open all letters as one PDF");
        all.setRouterIgnore(true);
        return all;
    }

    private RowGrid<DueNotice> list(List<DueNotice> due) {
        RowGrid<DueNotice> grid = new RowGrid<>(
                "Notices to send",
                "No notices to send. A notice appears here when a voter may cure a defect, or a"
                        + " ballot is rejected or counted in part.");
        grid.number("Envelope", "8rem", one -> one.notice().key().envelopeNo().value())
                .words("To", "12rem", one -> one.to().name())
                .words("About", "20rem", one -> NoticeWords.about(one.notice()))
                .words("Due", "10rem", this::due)
                .words("Voter's deadline", "13rem", this::until)
                .words("How", "9rem", NoticesView::how);
        grid.addComponentColumn(one -> Links.link(
                        "Letter",
                        "notices/letter/" + one.notice().key().envelopeNo() + "/"
                                + one.notice().number()))
                .setHeader("Letter")
                .setWidth("6rem")
                .setFlexGrow(0);
        grid.setItems(due);
        return grid;
    }

    private String due(DueNotice one) {
        return one.overdue()
                ? "overdue since " + UsDates.near(one.notice().dueAt().toLocalDate())
                : "today";
    }

    private String until(DueNotice one) {
        if (one.until() == null) {
            return "–";
        }
        return one.timeIsUp() ? "passed, " + UsDates.near(one.until()) : UsDates.near(one.until());
    }

    private static String how(DueNotice one) {
        String more = (one.phone().isEmpty() ? "" : ", phone") + (one.email().isEmpty() ? "" : ", email");
        return (one.to().hasAddress() ? "mail" : "no address") + more;
    }
}
