package org.proviso.review.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Collectors;
import org.proviso.access.AccessService;
import org.proviso.core.UserName;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.review.CaseState;
import org.proviso.review.queue.QueueFilter;
import org.proviso.review.queue.QueueReason;
import org.proviso.review.queue.QueueRow;
import org.proviso.review.queue.QueueService;
import org.proviso.ui.Links;
import org.proviso.ui.PageHead;
import org.proviso.ui.RowGrid;
import org.proviso.ui.UsDates;
import org.proviso.ui.frame.ElectionLine;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** The queue of cases waiting for a reviewer, most urgent first. */
@Route(value = "review", layout = OfficeFrame.class)
@PageTitle("Review \u00B7 Proviso")
@PermitAll
class QueueView extends Composite<Div> {

    private final QueueService queue;
    private final ElectionLine election;
    private final UserName userName;
    private final Select<CaseState> state = new Select<>();
    private final Select<Recommendation> outlook = new Select<>();
    private final Select<String> location = new Select<>();
    private final Checkbox mine = new Checkbox("Assigned to me");
    private final RowGrid<QueueRow> rows;
    private final PageHead head = new PageHead("Review", "");

    QueueView(QueueService queue, AccessService access, ReviewShift shift, WorkingElection workplace) {
        this.queue = queue;
        this.election = workplace.election().orElseThrow(org.proviso.ui.frame.NoElectionException::new);
        this.userName = access.signedIn().userName();
        rows = new RowGrid<>(
                "Cases waiting for a reviewer",
                "No cases match. Envelopes appear here after intake keys them. Proposals go on to second review"
                        + " or to the decider.");
        columns();
        getContent().addClassNames("sheet", "queue");
        getContent().add(head.beside(shift.button().first()), new ReviewNavigation(), filters(), rows);
        show();
    }

    private Component filters() {
        choice(state, "State", List.of(CaseState.OPEN, CaseState.IN_REVIEW, CaseState.PROPOSED), CaseState::spoken);
        choice(outlook, "Outlook", List.of(Recommendation.values()), Recommendation::words);
        choice(location, "Voting location", queue.locations(election.id()), name -> name);
        mine.addValueChangeListener(event -> show());
        Div filters = new Div(state, outlook, location, mine);
        filters.addClassName("filters");
        return filters;
    }

    private <T> void choice(
            Select<T> select, String label, List<T> items, com.vaadin.flow.component.ItemLabelGenerator<T> words) {
        select.setLabel(label);
        select.setItems(items);
        select.setEmptySelectionAllowed(true);
        select.setEmptySelectionCaption("Any");
        select.setItemLabelGenerator(item -> item == null ? "Any" : words.apply(item));
        select.addValueChangeListener(event -> show());
    }

    private void columns() {
        rows.addComponentColumn(row -> {
                    Component link = Links.link(row.envelopeNo().value(), "review/case/" + row.envelopeNo());
                    ((com.vaadin.flow.component.html.Anchor) link).addClassName("num");
                    return link;
                })
                .setHeader("Envelope")
                .setWidth("7rem")
                .setFlexGrow(0);
        rows.addComponentColumn(QueueView::turn)
                .setHeader("Priority")
                .setWidth("15rem")
                .setFlexGrow(1);
        rows.words("Outlook", "9rem", row -> row.outlook().words());
        rows.words(
                "Reason issued",
                "12rem",
                row -> row.issueReasons().stream().map(DateWords::code).collect(Collectors.joining(", ")));
        rows.words(
                "Voting location", "11rem", row -> row.votingLocation().isEmpty() ? "by mail" : row.votingLocation());
        rows.words("State", "14rem", this::stands);
    }

    private static Component turn(QueueRow row) {
        LocalDateTime at = row.at();
        String before = switch (row.turn()) {
            case CURE -> " ";
            case VOTER -> ", until ";
            case CHANGED, IN_TURN, SECOND_LOOK -> ", cast ";
        };
        Span words = new Span(row.turn().words() + (at == null ? "" : before + UsDates.near(at)));
        words.setClassName("waits", row.turn() == QueueReason.CURE || row.turn() == QueueReason.CHANGED);
        return words;
    }

    private String stands(QueueRow row) {
        ZoneId county = election.zone();
        String since = UsDates.near(row.since().atZone(county).toLocalDateTime());
        if (row.with() != null) {
            return "Assigned to " + row.with() + " since " + since;
        }
        return (row.state() == CaseState.PROPOSED ? "Proposed, in queue since " : "In queue since ") + since;
    }

    private void show() {
        QueueFilter filter = new QueueFilter(
                election.id(),
                state.getValue(),
                outlook.getValue(),
                location.getValue(),
                mine.getValue() ? userName.value() : null);
        int count = queue.count(filter);
        head.say(UsDates.count(count, "case") + ". Shortest voter deadline first, then changed cases, then oldest.");
        rows.show((offset, limit) -> queue.page(filter, offset, limit), () -> count);
    }
}
