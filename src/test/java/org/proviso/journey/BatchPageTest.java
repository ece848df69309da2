package org.proviso.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;
import static org.proviso.journey.PageDriver.fill;
import static org.proviso.journey.PageDriver.marked;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.said;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.proviso.core.EnvelopeNumber;
import org.proviso.release.Batch;
import org.proviso.release.BatchChangeService;
import org.proviso.release.ReleaseService;
import org.proviso.ui.MessageLine;
import org.springframework.beans.factory.annotation.Autowired;

/** How the release team puts a batch right on its page before it is open, and dissolves it by two: BatchChangePart. */
@OnPages
class BatchPageTest {

    private static final List<String> ENVELOPES = List.of("P-1001", "P-1042", "P-1054");

    @Autowired
    private PageDriver pages;

    /** A batch of envelopes that are decided to count; another batch may have been dissolved before. */
    private static Batch made() {
        Deciding deciding = new Deciding(PagesOffice.primary());
        ReleaseService releases = PagesOffice.the(ReleaseService.class);
        if (!as("hal", () -> releases.areOtherBallotsComplete(PagesOffice.ELECTION))) {
            PagesOffice.done("carl", () -> releases.recordOtherBallotsComplete(PagesOffice.ELECTION));
            ENVELOPES.forEach(number -> deciding.settled(PagesOffice.key(number)));
        }
        Set<EnvelopeNumber> waiting =
                ENVELOPES.stream().map(EnvelopeNumber::new).collect(Collectors.toSet());
        return PagesOffice.done("hal", () -> releases.makeBatch(PagesOffice.ELECTION, waiting, ""));
    }

    private static Batch now(Batch batch) {
        return as("hal", () -> PagesOffice.the(ReleaseService.class).batch(PagesOffice.ELECTION, batch.number()));
    }

    @Test
    void that_counting_is_complete_is_taken_back_with_a_reason() {
        Batch batch = made();
        ReleaseService releases = PagesOffice.the(ReleaseService.class);
        pages.on("release", "carl", () -> {
            press("Take back \"counting complete\"");
            press("Take back");
            assertThat(marked("Reason")).startsWith("Required.");
            fill("Reason", "A tray of mail ballots was found.");
            press("Take back");
            assertThat(MessageLine.words()).isEqualTo("Taken back: mail and in-person counting is not complete.");
            assertThat(releases.areOtherBallotsComplete(PagesOffice.ELECTION)).isFalse();
            press("Mail and in-person counting complete");
            press("Record as complete");
            assertThat(releases.areOtherBallotsComplete(PagesOffice.ELECTION)).isTrue();
        });
        dissolve(batch);
    }

    /** The envelopes wait for the next test again. */
    private static void dissolve(Batch batch) {
        BatchChangeService changes = PagesOffice.the(BatchChangeService.class);
        Batch asked = PagesOffice.done(
                "hal",
                () -> changes.askToDissolve(batch.electionId(), batch.number(), batch.version(), "Made for a test."));
        PagesOffice.done("ida", () -> changes.dissolve(batch.electionId(), batch.number(), asked.version()));
    }

    @Test
    void an_envelope_is_taken_out_and_two_dissolve_the_rest() {
        Batch batch = made();
        String page = "release/batch/" + batch.number();
        pages.on(page, "hal", () -> {
            press("Take envelope out");
            assertThat(marked("Envelope to take out")).isEqualTo("Required. Enter the envelope number.");
            fill("Envelope to take out", "  ");
            press("Take envelope out");
            assertThat(marked("Envelope to take out"))
                    .as("blanks are no number")
                    .isEqualTo("Required. Enter the envelope number.");
            fill("Envelope to take out", "P-1054");
            press("Take envelope out");
            assertThat(marked("Reason to take it out")).isEqualTo("Required. Enter the reason.");
            assertThat(now(batch).envelopes()).isEqualTo(3);
            fill("Reason to take it out", "It lay in the wrong tray.");
            press("Take envelope out");
            assertThat(said()).contains("P-1054 is out of the batch.");
            assertThat(now(batch).envelopes()).isEqualTo(2);
            press("Ask to dissolve batch");
            assertThat(marked("Reason to dissolve the batch")).isEqualTo("Required. Enter the reason.");
            fill("Reason to dissolve the batch", "The seal of the tray broke.");
            press("Ask to dissolve batch");
            assertThat(said()).contains("asked to dissolve this batch: The seal of the tray broke.");
            press("Dissolve batch");
            assertThat(now(batch).dissolvedAt()).as("not by whoever asked").isNull();
        });
        pages.on(page, "ida", () -> {
            press("Dissolve batch");
            assertThat(said()).contains("The batch is dissolved. Its envelopes wait to be opened again.");
        });
        assertThat(now(batch).dissolvedAt()).isNotNull();
        pages.on(
                "release",
                "hal",
                () -> assertThat(said()).contains("3 envelopes decided to count and not in a batch", "dissolved"));
    }
}
