package org.proviso.notices.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.notices.DueNotice;
import org.proviso.notices.NoticeService;
import org.proviso.notices.told.ToldDateService;
import org.proviso.ui.DownloadLinks;
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

    NoticesView(NoticeService notices, ToldDateService told, WorkingElection workplace) {
        ElectionId election = workplace.electionId();
        List<DueNotice> due = notices.due(election);
        getContent().addClassNames("sheet", "notices");
        PageHead head = new PageHead("Notices", lead(due));
        if (!due.isEmpty()) {
            head.beside(allLetters(election));
        }
        getContent()
                .add(
                        head,
                        new ToldDatesPart(() -> told.toldAnotherDate(election), election),
                        list(due),
                        DownloadLinks.of(
                                "Notices to send",
                                election,
                                () -> list(notices.due(election)).listed()));
    }

    private static String lead(List<DueNotice> due) {
        long overdue = due.stream().filter(DueNotice::overdue).count();
        long noAddress =
                due.stream().filter(dueNotice -> !dueNotice.to().hasAddress()).count();
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
        grid.number(
                        "Envelope",
                        "8rem",
                        dueNotice -> dueNotice.notice().key().envelopeNo().value())
                .words("To", "12rem", dueNotice -> dueNotice.to().name())
                .words("About", "20rem", dueNotice -> NoticeWords.about(dueNotice.notice()))
                .words("Due", "10rem", this::due)
                .words("Voter's deadline", "13rem", this::until)
                .words("How", "9rem", NoticesView::how);
        grid.addComponentColumn(NoticesView::letter)
                .setHeader("Letter")
                .setWidth("6rem")
                .setFlexGrow(0);
        grid.acts("Letter");
        grid.setItems(due);
        return grid;
    }

    /** Its name says whose letter it is, for who hears a list of the links. */
    private static Anchor letter(DueNotice dueNotice) {
        EnvelopeNumber envelopeNo = dueNotice.notice().key().envelopeNo();
        Anchor letter = Links.link(
                "Letter",
                "notices/letter/" + envelopeNo + "/" + dueNotice.notice().number());
        letter.getElement().setAttribute("aria-label", "Letter, envelope " + envelopeNo);
        return letter;
    }

    private String due(DueNotice dueNotice) {
        return dueNotice.overdue()
                ? "overdue since " + UsDates.near(dueNotice.notice().dueAt().toLocalDate())
                : "today";
    }

    private String until(DueNotice dueNotice) {
        if (dueNotice.until() == null) {
            return "–";
        }
        return dueNotice.timeIsUp() ? "passed, " + UsDates.near(dueNotice.until()) : UsDates.near(dueNotice.until());
    }

    private static String how(DueNotice dueNotice) {
        String more = (dueNotice.phone().isEmpty() ? "" : ", phone")
                + (dueNotice.email().isEmpty() ? "" : ", email");
        return (dueNotice.to().hasAddress() ? "mail" : "no address") + more;
    }
}
