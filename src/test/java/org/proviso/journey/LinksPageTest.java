package org.proviso.journey;

import static com.github.mvysny.kaributesting.v10.LocatorJ._find;
import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.said;

import com.vaadin.flow.component.checkbox.Checkbox;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.proviso.core.EnvelopeKey;
import org.proviso.review.acts.CaseAssignmentService;
import org.proviso.review.facts.LinkStore;
import org.springframework.beans.factory.annotation.Autowired;

/** Sure links read in a list and confirmed together. */
@OnPages
class LinksPageTest {

    @Autowired
    private PageDriver pages;

    private static Checkbox box(String envelopeNo) {
        return _find(Checkbox.class).stream()
                .filter(box -> box.getAriaLabel().equals(Optional.of("Confirm " + envelopeNo)))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> ticked() {
        return _find(Checkbox.class).stream()
                .filter(Checkbox::getValue)
                .map(box -> box.getAriaLabel().orElseThrow().substring("Confirm ".length()))
                .toList();
    }

    private static boolean isSettled(String envelopeNo) {
        return PagesOffice.the(LinkStore.class)
                .newest(PagesOffice.key(envelopeNo))
                .orElseThrow()
                .isSettled();
    }

    /** Somebody took it and gave it back: it is open again, in another version. */
    private static void changed(EnvelopeKey key) {
        CaseAssignmentService cases = PagesOffice.the(CaseAssignmentService.class);
        PagesOffice.done("ben", () -> cases.take(key, PagesOffice.version(key)));
        PagesOffice.done("ben", () -> cases.giveBack(key, PagesOffice.version(key)));
    }

    @Test
    void a_line_that_changed_says_so_and_the_others_keep_their_ticks() {
        EnvelopeKey stale = PagesOffice.free("P-1034");
        EnvelopeKey gone = PagesOffice.free("P-1035");
        EnvelopeKey kept = PagesOffice.free("P-1036");
        pages.on("review/links", "ada", () -> {
            assertThat(ticked()).as("no line is preset").isEmpty();
            assertThat(said()).contains("= same", "\u2260 differs");
            press("Confirm ticked links");
            assertThat(said()).contains("Tick the links that you read and want to confirm.");
            for (EnvelopeKey key : List.of(stale, gone, kept)) {
                box(key.envelopeNo().value()).setValue(true);
            }
            assertThat(said()).contains("Confirm 3 links");
            changed(stale);
            PagesOffice.done(
                    "ben", () -> PagesOffice.the(CaseAssignmentService.class).take(gone, PagesOffice.version(gone)));
            press("Confirm 3 links");
            press("Confirm links");
            assertThat(said())
                    .contains("No links confirmed.", "P-1035 is no longer among them.")
                    .contains("Changed in the meantime. Read it again.", "Confirm 1 link");
            assertThat(ticked()).containsExactly("P-1036");
            assertThat(isSettled("P-1036")).as("all or none").isFalse();
            box("P-1034").setValue(true);
            press("Confirm 2 links");
            press("Confirm links");
            assertThat(said()).contains("2 links confirmed. Each was recorded separately.");
        });
        assertThat(isSettled("P-1034")).isTrue();
        assertThat(isSettled("P-1036")).isTrue();
        assertThat(isSettled("P-1035")).isFalse();
    }

    @Test
    void all_lines_that_are_the_same_are_ticked_at_once_and_unticked_again() {
        pages.on("review/links", "ada", () -> {
            press("Tick all that are the same");
            assertThat(ticked())
                    .isNotEmpty()
                    .hasSizeLessThan(_find(Checkbox.class).size());
            press("Untick all");
            assertThat(ticked()).isEmpty();
        });
    }
}
