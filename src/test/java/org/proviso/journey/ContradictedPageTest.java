package org.proviso.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.said;

import org.junit.jupiter.api.Test;
import org.proviso.core.EnvelopeKey;
import org.proviso.release.ReleaseService;
import org.springframework.beans.factory.annotation.Autowired;

/** What a decider and a supervisor see and do where a newer record contradicts a decision: ContradictedView. */
@OnPages
class ContradictedPageTest {

    @Autowired
    private PageDriver pages;

    @Test
    void a_contradicted_decision_is_on_today_and_waits_for_the_decider() {
        Primary primary = PagesOffice.primary();
        EnvelopeKey key = primary.envelope("in_line_at_close");
        PagesOffice.free(key.envelopeNo().value());
        new Deciding(primary).settled(key);
        NewerMailList newer = new NewerMailList(primary).accepted(key);
        newer.brought();
        pages.on("", "dora", () -> assertThat(said()).contains("Newer lists to confirm", "since Thu, Aug 6"));
        newer.inUse();
        pages.on("", "eve", () -> assertThat(said()).contains("Decisions contradicted by newer records"));
        pages.on("board/contradicted", "eve", () -> {
            assertThat(said())
                    .contains("Decided to count", "Reject: the voter's mail ballot was accepted", "Add to agenda");
            press("Add to agenda");
            // other tests of this server may have called a session or not
            assertThat(said())
                    .containsPattern("let stand, by a motion in a session|A motion there reopens it or lets it stand");
        });
        pages.on("board/contradicted", "dora", () -> assertThat(said()).contains("Waits for the decider"));
        assertThat(Office.as("hal", () -> PagesOffice.the(ReleaseService.class).waiting(PagesOffice.ELECTION)))
                .noneMatch(envelope -> envelope.key().equals(key));
    }
}
