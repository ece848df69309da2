package org.proviso.journey;

import static com.github.mvysny.kaributesting.v10.LocatorJ._find;
import static com.github.mvysny.kaributesting.v10.LocatorJ._get;
import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;
import static org.proviso.journey.PageDriver.said;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.H1;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.steps.ClosingLine;
import org.springframework.beans.factory.annotation.Autowired;

/** The supervisor's page of what is missing until closing, and the ways to it. */
@OnPages
class ClosingPageTest {

    private static final String ADDRESS = "canvass/closing";

    @Autowired
    private PageDriver pages;

    private static List<ClosingLine> missing() {
        return as("carl", () -> PagesOffice.the(CanvassService.class).missing(PagesOffice.ELECTION))
                .missing();
    }

    @Test
    void each_line_says_how_many_of_what_and_by_whom_and_leads_to_its_page() {
        pages.on(ADDRESS, "carl", () -> {
            assertThat(_get(H1.class).getText()).isEqualTo("Before closing");
            assertThat(missing()).isNotEmpty();
            for (ClosingLine line : missing()) {
                assertThat(said())
                        .contains(String.valueOf(line.number()))
                        .contains(line.step().words(line.number()))
                        .contains(line.step().who());
                Anchor link = _find(Anchor.class).stream()
                        .filter(anchor -> anchor.getAriaLabel()
                                .filter(label -> label.equals(line.step().link() + ": " + line.words()))
                                .isPresent())
                        .findFirst()
                        .orElseThrow(() -> new AssertionError("no link for " + line));
                assertThat(link.getHref()).isEqualTo("/" + line.step().path());
                assertThat(link.getText())
                        .as("its name begins as it reads")
                        .isEqualTo(line.step().link());
            }
        });
    }

    @Test
    void today_tells_a_supervisor_how_many_steps_are_left_and_nobody_else() {
        pages.on("", "carl", () -> assertThat(said()).contains(missing().size() + "Steps left before closing"));
        pages.on("", "ada", () -> assertThat(said()).doesNotContain("before closing"));
    }

    @Test
    void the_canvass_leads_there() {
        pages.on(
                "canvass",
                "carl",
                () -> assertThat(_find(Anchor.class))
                        .extracting(Anchor::getHref)
                        .contains("/" + ADDRESS));
        pages.on(
                "canvass",
                "ada",
                () -> assertThat(_find(Anchor.class))
                        .extracting(Anchor::getHref)
                        .doesNotContain("/" + ADDRESS));
    }
}
