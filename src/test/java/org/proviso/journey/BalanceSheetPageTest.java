package org.proviso.journey;

import static com.github.mvysny.kaributesting.v10.LocatorJ._find;
import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.as;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.said;
import static org.proviso.journey.PageDriver.text;
import static org.proviso.journey.PageDriver.type;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.Paragraph;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.Figure;
import org.proviso.canvass.NoteFigure;
import org.proviso.canvass.VotingHours;
import org.proviso.intake.RecordTransmittal;
import org.proviso.intake.TransmittalService;
import org.proviso.ui.field.ActButton;
import org.springframework.beans.factory.annotation.Autowired;

/** The sheet of balances as a supervisor types on it. */
@OnPages
class BalanceSheetPageTest {

    /** Locations that no envelope of the sample is from: more than one screen of them. */
    private static final int LOCATIONS = 30;

    /** Boxes for nine figures in each of so many rows, and the two that the county has itself. */
    private static final int BOXES = 25 * 9;

    @Autowired
    private PageDriver pages;

    @BeforeAll
    static void locations() {
        for (int location = 1; location <= LOCATIONS; location++) {
            String place = place(location);
            accepted(as(
                    "carl",
                    () -> PagesOffice.the(TransmittalService.class)
                            .record(new RecordTransmittal(
                                    PagesOffice.ELECTION, place, null, "S1", "1", "1", 20, 0, 0, 20, 0, 0, 0))));
        }
    }

    private static String place(int location) {
        return String.format("Sheet Hall %02d", location);
    }

    private static Integer noted(int location, Figure figure) {
        return as("carl", () -> PagesOffice.the(CanvassService.class).accounts(PagesOffice.ELECTION))
                .get(0)
                .locations()
                .get(place(location))
                .figures()
                .get(figure);
    }

    /** Only this location is on the screen, so its boxes are those of the first row. */
    private static void find(int location) {
        type("sought", place(location));
    }

    private static List<String> boxes() {
        return _find(Input.class).stream()
                .map(box -> box.getId().orElse(""))
                .filter(id -> id.startsWith("row-"))
                .toList();
    }

    /** What is seen from every row, however far the page is scrolled. */
    private static String atTheFoot() {
        return _find(Div.class, wanted -> wanted.withClasses("foot")).stream()
                .flatMap(Component::getChildren)
                .filter(Paragraph.class::isInstance)
                .map(part -> ((Paragraph) part).getText())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_difference_is_marked_with_a_word_and_a_sentence_as_one_types() {
        pages.on("canvass/sheet", "carl", () -> {
            find(1);
            assertThat(said()).contains("… Not complete").doesNotContain("≠ Off ");
            type("row-0-missing", "0");
            type("row-0-unaccounted", "0");
            assertThat(said()).contains("= Agrees");
            type("row-0-unused", "18");
            assertThat(said())
                    .contains(
                            "≠ Off",
                            place(1) + " was given 20 envelopes and issued 0, spoiled 0, brought back unused 18")
                    .contains("was 20");
            assertThat(noted(1, Figure.UNUSED))
                    .as("nothing is saved while one types")
                    .isEqualTo(20);
        });
    }

    @Test
    void one_press_saves_a_row_or_the_sheet_with_what_is_on_other_screens() {
        pages.on("canvass/sheet", "carl", () -> {
            find(2);
            type("row-0-missing", "1");
            find(3);
            type("row-0-missing", "2");
            type("row-0-unused", "18");
            find(4);
            type("row-0-missing", "3");
            assertThat(said()).contains("4 figures typed and not saved yet.");
            press("Save sheet");
            assertThat(said()).contains("Enter the source of the figures.");
            type("source", "Closing forms.");
            press("Save row " + place(4));
            assertThat(said()).contains("Saved: 1 figure.", "3 figures typed and not saved yet.");
            assertThat(noted(3, Figure.MISSING)).isNull();
            press("Save sheet");
            assertThat(said()).contains("Saved: 3 figures.", "Nothing typed is waiting to be saved.");
            assertThat(atTheFoot()).isEqualTo("Saved: 3 figures.");
        });
        assertThat(noted(2, Figure.MISSING)).isEqualTo(1);
        assertThat(noted(3, Figure.MISSING)).isEqualTo(2);
        assertThat(noted(3, Figure.UNUSED)).isEqualTo(18);
        assertThat(noted(4, Figure.MISSING)).isEqualTo(3);
    }

    @Test
    void a_stale_figure_is_told_and_what_was_typed_stays_in_its_box() {
        pages.on("canvass/sheet", "carl", () -> {
            find(5);
            type("source", "Closing form.");
            type("row-0-missing", "4");
            type("row-0-unaccounted", "1");
            as(
                    "dora",
                    () -> accepted(PagesOffice.the(CanvassService.class)
                            .noteFigure(new NoteFigure(
                                    PagesOffice.ELECTION,
                                    place(5),
                                    VotingHours.REGULAR,
                                    Figure.MISSING,
                                    2,
                                    "By telephone."))));
            press("Save sheet");
            assertThat(said()).contains("Somebody changed this in the meantime.", "Changed: " + place(5), "was 2");
            assertThat(text("row-0-missing")).isEqualTo("4");
            assertThat(text("row-0-unaccounted")).isEqualTo("1");
            assertThat(noted(5, Figure.UNACCOUNTED)).isNull();
            press("Save sheet");
            assertThat(said()).contains("Saved: 2 figures.").doesNotContain("Somebody changed");
        });
        assertThat(noted(5, Figure.MISSING)).isEqualTo(4);
        assertThat(noted(5, Figure.UNACCOUNTED)).isEqualTo(1);
    }

    @Test
    void what_is_no_number_is_said_at_its_box_and_keeps_the_sheet_from_being_saved() {
        pages.on("canvass/sheet", "carl", () -> {
            find(6);
            type("source", "Closing form.");
            type("row-0-missing", "two");
            type("row-0-unaccounted", "0");
            assertThat(said()).contains("number?");
            press("Save sheet");
            assertThat(said()).contains("Not saved. A figure is a whole number");
            assertThat(atTheFoot()).startsWith("Not saved. A figure is a whole number");
            assertThat(noted(6, Figure.UNACCOUNTED)).isNull();
        });
    }

    @Test
    void only_a_screen_of_rows_has_boxes_and_the_others_are_a_press_away() {
        pages.on("canvass/sheet", "carl", () -> {
            assertThat(boxes()).hasSize(BOXES);
            press("Next rows");
            assertThat(boxes()).isNotEmpty().hasSizeLessThan(BOXES);
            assertThat(said()).contains("Rows 26 to ");
            type("sought", "sheet hall");
            assertThat(said()).contains("Rows 1 to 25 of " + LOCATIONS);
        });
    }

    @Test
    void tab_goes_through_the_boxes_in_the_order_of_the_columns_and_nothing_else_of_the_row() {
        pages.on("canvass/sheet", "carl", () -> {
            find(7);
            assertThat(boxes())
                    .containsExactly(
                            "row-0-supplied",
                            "row-0-issued",
                            "row-0-spoiled",
                            "row-0-unused",
                            "row-0-missing",
                            "row-0-scanned_in_error",
                            "row-0-sent_back",
                            "row-0-unaccounted",
                            "row-0-held_by_law");
            assertThat(_find(ActButton.class))
                    .extracting(button -> button.getElement().getTextRecursively())
                    .contains("Save sheet")
                    .doesNotContain("Save row");
        });
    }

    @Test
    void only_supervisors_have_the_sheet() {
        pages.on("canvass", "carl", () -> assertThat(said()).contains("Sheet of balances"));
        pages.on("canvass", "ada", () -> assertThat(said()).doesNotContain("Sheet of balances"));
    }
}
