package org.proviso.journey;

import static com.github.mvysny.kaributesting.v10.LocatorJ._find;
import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.as;
import static org.proviso.journey.PageDriver.fill;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.said;

import com.vaadin.flow.component.details.Details;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.proviso.canvass.BalanceResult;
import org.proviso.canvass.BalanceRule;
import org.proviso.canvass.CanvassService;
import org.proviso.intake.RecordTransmittal;
import org.proviso.intake.TransmittalService;
import org.springframework.beans.factory.annotation.Autowired;

/** Two supervisors explain a difference on the canvass page: BalancesPart with ExplanationSheet and TotalDetailPart. */
@OnPages
class CanvassPageTest {

    /** A voting location that no envelope of the sample is from: its bag came back under another seal. */
    private static final String PLACE = "Old Mill Annex";

    private static final String BROKEN = PLACE + " had 1 changed bag seal.";

    @Autowired
    private PageDriver pages;

    private static void bagWithChangedSeal() {
        accepted(as(
                "carl",
                () -> PagesOffice.the(TransmittalService.class)
                        .record(new RecordTransmittal(
                                PagesOffice.ELECTION, PLACE, null, "B77", "500", "501", 60, 0, 0, 60, 0, 0, 0))));
    }

    private static BalanceResult seals() {
        return as(
                        "carl",
                        () -> PagesOffice.the(CanvassService.class)
                                .balances(PagesOffice.ELECTION, List.of(BalanceRule.SEALS)))
                .stream()
                .filter(balance -> balance.place().equals(PLACE))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_difference_is_looked_into_explained_by_one_and_signed_by_another() {
        bagWithChangedSeal();
        pages.on("canvass", "carl", () -> {
            assertThat(said()).contains(BROKEN);
            Details behind = _find(Details.class).stream()
                    .filter(each -> each.getElement().getAttribute("aria-label") != null
                            && each.getElement().getAttribute("aria-label").endsWith(BROKEN))
                    .findFirst()
                    .orElseThrow();
            behind.setOpened(true);
            assertThat(said()).contains("bag B77, out with seal 500, back with seal 501: issued 0, sent back 0");
            press("Explain difference: " + BROKEN);
            press("Write explanation");
            assertThat(said()).contains("Required. Enter what happened.");
            fill("What happened, and how the office knows", "The judge resealed the bag and signed the log.");
            press("Write explanation");
            assertThat(said()).contains("Another supervisor has to sign it.").doesNotContain("Sign explanation");
        });
        assertThat(seals().isSettled()).isFalse();
        pages.on("canvass/closing", "dora", () -> assertThat(said()).contains("explanation to sign", BROKEN));
        pages.on("canvass", "ada", () -> assertThat(said()).doesNotContain("Explain difference"));
        pages.on("canvass", "dora", () -> press("Sign explanation"));
        assertThat(seals()).isInstanceOf(BalanceResult.Explained.class);
        pages.on(
                "canvass",
                "ada",
                () -> assertThat(said())
                        .contains("The judge resealed the bag and signed the log. Signed by carl and dora."));
    }
}
