package org.proviso.review.ui.list;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.grid.Grid;
import com.vaadin.flow.component.grid.GridSortOrder;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.data.provider.SortDirection;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.IntSupplier;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.review.CaseState;
import org.proviso.review.queue.QueueFilter;
import org.proviso.review.queue.QueueReason;
import org.proviso.review.queue.QueueRow;
import org.proviso.review.queue.QueueSort;
import org.proviso.ui.Links;
import org.proviso.ui.RowGrid;
import org.proviso.ui.UsDates;

/** Cases in lines, a page at a time. A heading sorts the list, in the database. */
public final class CaseGrid extends Composite<RowGrid<QueueRow>> {

    private final Map<QueueSort, Grid.Column<QueueRow>> sorted = new EnumMap<>(QueueSort.class);
    private final ZoneId county;
    private final String name;
    private final String whenEmpty;
    private String list = "";
    private boolean showing;

    public CaseGrid(String name, String whenEmpty, ZoneId county) {
        this.name = name;
        this.whenEmpty = whenEmpty;
        this.county = county;
        column(QueueSort.ENVELOPE, "Envelope", "6.5rem", this::number);
        // in a narrow window the columns are scrolled beside the number that they are about
        getContent().getColumns().get(0).setFrozen(true);
        column(QueueSort.PRIORITY, "Priority", "8.5rem", CaseGrid::turn);
        words(
                QueueSort.PRIORITY,
                "Due",
                "7.5rem",
                row -> row.due().map(UsDates::brief).orElse(""));
        column(QueueSort.OUTLOOK, "Outlook", "8.5rem", row -> OutlookMark.of(row.outlook()));
        words(QueueSort.REASON, "Reason issued", "9.5rem", CaseGrid::reasons);
        words(
                QueueSort.LOCATION,
                "Voting location",
                "11rem",
                row -> row.votingLocation().isEmpty() ? "by mail" : row.votingLocation());
        words(QueueSort.PRECINCT, "Precinct", "5.5rem", QueueRow::precinct);
        words(QueueSort.LANGUAGE, "Language", "5.5rem", row -> Languages.words(row.language()));
        words(QueueSort.HOLDER, "Assigned to", "8rem", CaseGrid::holder);
        words(QueueSort.AGE, "Last act", "7.5rem", row -> UsDates.brief(local(row)));
    }

    @Override
    protected RowGrid<QueueRow> initContent() {
        return new RowGrid<>(name, whenEmpty);
    }

    /** Calls back with the filter in the order that a person chose at a heading. */
    public CaseGrid whenSorted(Consumer<QueueFilter> sorting, java.util.function.Supplier<QueueFilter> now) {
        getContent().addSortListener(event -> {
            if (!showing) {
                sorting.accept(event.getSortOrder().stream()
                        .findFirst()
                        .flatMap(order -> sort(order)
                                .map(by -> now.get().sortedBy(by, order.getDirection() == SortDirection.DESCENDING)))
                        .orElseGet(() -> now.get().sortedBy(QueueSort.PRIORITY, false)));
            }
        });
        return this;
    }

    /** Shows the cases that the filter leaves; {@code list} is the filter in its address, handed on to a case. */
    public void show(QueueFilter filter, String handedOn, RowGrid.RowFetcher<QueueRow> rows, IntSupplier count) {
        list = handedOn;
        showing = true;
        Grid.Column<QueueRow> column = sorted.get(filter.sort());
        if ((filter.sort() == QueueSort.PRIORITY && !filter.descending()) || column == null) {
            getContent().sort(List.of());
        } else {
            getContent()
                    .sort(List.of(new GridSortOrder<>(
                            column, filter.descending() ? SortDirection.DESCENDING : SortDirection.ASCENDING)));
        }
        showing = false;
        getContent().show(rows, count);
    }

    private java.util.Optional<QueueSort> sort(GridSortOrder<QueueRow> order) {
        return sorted.entrySet().stream()
                .filter(entry -> entry.getValue().equals(order.getSorted()))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    private void words(
            QueueSort sort, String heading, String width, java.util.function.Function<QueueRow, String> cell) {
        column(sort, heading, width, row -> new Span(cell.apply(row)));
    }

    private void column(
            QueueSort sort, String heading, String width, java.util.function.Function<QueueRow, Component> cell) {
        Grid.Column<QueueRow> column = getContent()
                .addComponentColumn(cell::apply)
                .setHeader(heading)
                .setWidth(width)
                .setFlexGrow(sort == QueueSort.LOCATION || sort == QueueSort.REASON ? 1 : 0);
        if (sorted.putIfAbsent(sort, column) == null) {
            column.setKey(sort.code());
            column.setSortProperty(sort.code());
        }
    }

    private Component number(QueueRow row) {
        EnvelopeNumber number = row.envelopeNo();
        Anchor link = Links.link(number.value(), "review/case/" + number + list);
        link.addClassName("num");
        return link;
    }

    private static Component turn(QueueRow row) {
        Span words = new Span(row.turnWords());
        words.setClassName("waits", row.turn() == QueueReason.CURE || row.turn() == QueueReason.CHANGED);
        return words;
    }

    private static String reasons(QueueRow row) {
        return row.issueReasons().stream().map(DateWords::code).collect(java.util.stream.Collectors.joining(", "));
    }

    private static String holder(QueueRow row) {
        String with = row.with();
        return with != null
                ? with
                : row.state() == CaseState.OPEN ? "" : row.state().spoken();
    }

    private LocalDateTime local(QueueRow row) {
        return row.since().atZone(county).toLocalDateTime();
    }
}
