package org.proviso.review.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import org.proviso.review.queue.QueueFilter;
import org.proviso.review.queue.QueueFilterText;
import org.proviso.review.queue.QueueService;
import org.proviso.review.queue.SavedViewService;
import org.proviso.review.ui.list.CaseFilters;
import org.proviso.review.ui.list.CaseGrid;
import org.proviso.review.ui.list.SavedViews;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.PageHead;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.ElectionLine;
import org.proviso.ui.frame.NoElectionException;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/**
 * The queue of cases waiting for a reviewer, most urgent first. What it is narrowed by and its order stand in its
 * address, so that going back, a bookmark and a saved view show the same list.
 */
@Route(value = "review", layout = OfficeFrame.class)
@PageTitle("Review \u00B7 Proviso")
@PermitAll
class QueueView extends Composite<Div> implements BeforeEnterObserver {

    private final QueueService queue;
    private final CaseFilters filters;
    private final CaseGrid rows;
    private final PageHead head = new PageHead("Review", "");
    private final ActButton anyCase;
    private final SavedViews views;
    private final DownloadLinks file = DownloadLinks.toAddresses("Cases");
    private QueueFilter filter;

    QueueView(QueueService queue, SavedViewService saved, ReviewShift shift, WorkingElection workplace) {
        this.views = new SavedViews(saved, "review");
        this.queue = queue;
        ElectionLine election = workplace.election().orElseThrow(NoElectionException::new);
        this.filter = QueueFilter.all(election.id());
        this.filters = new CaseFilters(queue, election.id(), QueueView::open);
        this.rows = new CaseGrid(
                        "Cases waiting for a reviewer",
                        "No cases match. Envelopes appear here after intake keys them. Proposals go on to second"
                                + " review or to the decider.",
                        election.zone())
                .whenSorted(QueueView::open, () -> filter);
        anyCase = new ActButton("Show all").quiet().does(() -> open(QueueFilter.all(election.id())));
        Div below = new Div(views, anyCase, file);
        below.addClassName("ways");
        getContent().addClassNames("sheet", "queue");
        getContent().add(head.beside(shift.button().first()), new ReviewNavigation(), filters, below, rows);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        filter = QueueFilterText.read(
                filter.electionId(), event.getLocation().getQueryParameters().getQueryString());
        int count = queue.count(filter);
        filters.show(filter);
        views.show(filter);
        file.lead(format -> ListFileController.address(format, filter));
        anyCase.setVisible(!filter.isOpen());
        head.say(UsDates.count(count, "case")
                + (filter.isOpen()
                        ? ". Shortest voter deadline first, then changed cases, then oldest."
                        : ": " + filters.words() + "."));
        rows.show(filter, handedOn(), (offset, limit) -> queue.page(filter, offset, limit), () -> count);
    }

    /** A case opened from a list that is narrowed or sorted is worked on as one of that list. */
    private String handedOn() {
        String text = QueueFilterText.write(filter);
        return text.isEmpty() ? "" : "?" + CaseView.LIST + "=" + URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /** The address of the list with this filter. */
    static String address(QueueFilter wanted) {
        String text = QueueFilterText.write(wanted);
        return text.isEmpty() ? "review" : "review?" + text;
    }

    /** Opens the list with this filter, so that going back leads to the one before. */
    static void open(QueueFilter wanted) {
        UI.getCurrent().navigate(QueueView.class, QueryParameters.fromString(QueueFilterText.write(wanted)));
    }
}
