package org.proviso.journey;

import static com.github.mvysny.kaributesting.v10.LocatorJ._get;
import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.PageDriver.fill;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.pressOnCase;
import static org.proviso.journey.PageDriver.said;
import static org.proviso.journey.PageDriver.value;

import com.github.mvysny.kaributesting.v10.GridKt;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.grid.Grid;
import com.vaadin.flow.component.grid.GridSortOrder;
import com.vaadin.flow.data.provider.SortDirection;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.proviso.core.EnvelopeKey;
import org.proviso.review.CaseState;
import org.proviso.review.queue.QueueChoice;
import org.proviso.review.queue.QueueColumn;
import org.proviso.review.queue.QueueFilter;
import org.proviso.review.queue.QueueRow;
import org.proviso.review.queue.QueueService;
import org.proviso.ui.OutcomeMark;
import org.springframework.beans.factory.annotation.Autowired;

/** The queue as a reviewer narrows and sorts it. */
@OnPages
class QueuePageTest {

    private static final QueueFilter ALL = QueueFilter.all(PagesOffice.ELECTION);

    @Autowired
    private PageDriver pages;

    private static int count(QueueFilter filter) {
        return PagesOffice.the(QueueService.class).count(filter);
    }

    @SuppressWarnings("unchecked")
    private static Grid<QueueRow> grid() {
        return _get(Grid.class);
    }

    private static String address() {
        return UI.getCurrent().getInternals().getActiveViewLocation().getPathWithQueryParameters();
    }

    @Test
    void what_is_chosen_in_a_field_narrows_the_list_and_stands_in_its_address() {
        pages.on("review", "ben", () -> {
            int all = GridKt._size(grid());
            fill("Outlook", new QueueChoice("reject", "reject"));
            assertThat(address()).isEqualTo("review?outlook=reject");
            assertThat(said()).contains("outlook reject");
            assertThat(GridKt._size(grid()))
                    .isEqualTo(count(ALL.with(QueueColumn.OUTLOOK, "reject")))
                    .isPositive()
                    .isLessThan(all);
            fill("Reason issued", new QueueChoice("no_id", "no ID"));
            assertThat(address()).contains("outlook=reject", "reason=no_id");
            press("Show all");
            assertThat(address()).isEqualTo("review");
            assertThat(value("Outlook")).isNull();
            assertThat(GridKt._size(grid())).isEqualTo(all);
        });
    }

    @Test
    void an_address_opens_its_list_with_the_fields_filled() {
        pages.on("review?precinct=03-2&reason=no_id&sort=location&last=yes", "ben", () -> {
            assertThat(value("Reason issued")).isEqualTo(new QueueChoice("no_id", "no ID"));
            assertThat(value("Precinct")).isEqualTo(new QueueChoice("03-2", "03-2"));
            List<GridSortOrder<QueueRow>> order = grid().getSortOrder();
            assertThat(order).hasSize(1);
            assertThat(order.get(0).getDirection()).isEqualTo(SortDirection.DESCENDING);
        });
    }

    @Test
    void a_heading_sorts_the_list_in_the_database() {
        pages.on("review", "ben", () -> {
            Grid<QueueRow> grid = grid();
            Grid.Column<QueueRow> precinct = grid.getColumns().stream()
                    .filter(column -> column.getHeaderText().equals("Precinct"))
                    .findFirst()
                    .orElseThrow();
            grid.sort(List.of(new GridSortOrder<>(precinct, SortDirection.DESCENDING)));
            assertThat(address()).contains("sort=precinct", "last=yes");
            QueueRow first = GridKt._get(grid(), 0);
            QueueRow last = GridKt._get(grid(), GridKt._size(grid()) - 1);
            assertThat(first.precinct()).isGreaterThan(last.precinct());
        });
    }

    @Test
    void an_outcome_has_its_mark_and_a_deadline_is_short() {
        pages.on("review?outlook=count_in_part", "ben", () -> {
            assertThat(GridKt._size(grid())).isPositive();
            Component outlook = GridKt._getCellComponent(grid(), 0, "outlook");
            assertThat(outlook).isInstanceOf(OutcomeMark.class);
            assertThat(outlook.getElement().getTextRecursively()).isEqualTo("Count in part");
        });
    }

    /** ViewNameSheet: a view is saved, named anew and removed. */
    @Test
    void a_list_is_saved_under_a_name_and_found_again() {
        pages.on("review?outlook=reject", "ben", () -> {
            press("Save this view");
            press("Save view");
            assertThat(said()).contains("Enter a name of up to 60 characters.");
            fill("Name of the view", "To reject");
            press("Save view");
            assertThat(said()).contains("View \u201CTo reject\u201D saved.");
        });
        pages.on("review", "ben", () -> assertThat(said()).contains("To reject").doesNotContain("Save this view"));
        pages.on("review", "ada", () -> assertThat(said()).doesNotContain("To reject"));
        pages.on("review?outlook=reject", "ben", () -> {
            press("Rename view");
            fill("Name of the view", "Rejections");
            press("Save name");
            assertThat(said()).contains("Rejections");
            press("Remove view");
            assertThat(said()).contains("Save this view", "The cases are as they were.");
        });
    }

    /** Envelopes of court-extended hours: no other test of pages uses them. */
    @Test
    void cases_opened_from_a_list_are_worked_one_after_the_other_until_it_ends() {
        String list = "?list=" + URLEncoder.encode("reason=court_hours&sort=envelope", StandardCharsets.UTF_8);
        EnvelopeKey last = PagesOffice.key("P-1041");
        pages.on("review/case/P-1038" + list, "ben", () -> {
            assertThat(said()).contains("Back to the list");
            press("Take next of this list");
            assertThat(address()).endsWith("P-1039");
            UI.getCurrent().navigate("review/case/P-1039");
            pressOnCase("Return case to queue");
            assertThat(address()).contains("reason=court_hours").startsWith("review?");
            assertThat(PagesOffice.state(PagesOffice.key("P-1040"))).isEqualTo(CaseState.OPEN);
        });
        pages.on("review/case/P-1040" + list, "ben", () -> {
            press("Take next of this list");
            assertThat(address()).endsWith("P-1041");
            UI.getCurrent().navigate("review/case/P-1041");
            press("Take next of this list");
            assertThat(said()).contains("Envelope P-1041 stays assigned to you. That was the last case of this list.");
            assertThat(address()).startsWith("review?");
        });
        assertThat(PagesOffice.state(last)).isEqualTo(CaseState.IN_REVIEW);
        pages.on("review/case/P-1041" + list, "ben", () -> {
            press("Leave the list");
            assertThat(said()).contains("Take next case").doesNotContain("Take next of this list");
            pressOnCase("Return case to queue");
            assertThat(address()).isEqualTo("review");
        });
    }
}
