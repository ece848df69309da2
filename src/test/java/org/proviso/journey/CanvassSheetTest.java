package org.proviso.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;
import static org.proviso.journey.PageDriver.fill;
import static org.proviso.journey.PageDriver.marked;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.said;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.Figure;
import org.springframework.beans.factory.annotation.Autowired;

/** How a supervisor supplies a figure of the canvass: FigureSheet. */
@OnPages
class CanvassSheetTest {

    @Autowired
    private PageDriver pages;

    @Test
    void a_figure_is_recorded_with_its_source() {
        pages.on("canvass", "carl", () -> {
            press("Record a figure for " + CanvassService.COUNTY);
            fill("Figure", Figure.CREDITED);
            fill("Number", 7);
            press("Record figure");
            assertThat(marked("Source of the figure")).isEqualTo("Enter the source of the figure.");
            assertThat(credited()).isNull();
            fill("Source of the figure", "The roll's list of credited voters.");
            press("Record figure");
            assertThat(said()).contains("Recorded: " + CanvassService.COUNTY + " gave credit for voting to 7 voters.");
        });
        assertThat(credited()).isEqualTo(7);
    }

    private static @Nullable Integer credited() {
        return as("carl", () -> PagesOffice.the(CanvassService.class).accounts(PagesOffice.ELECTION)).stream()
                .map(account -> account.county().figures().get(Figure.CREDITED))
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }
}
