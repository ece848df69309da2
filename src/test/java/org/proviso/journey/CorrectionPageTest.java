package org.proviso.journey;

import static com.github.mvysny.kaributesting.v10.LocatorJ._get;
import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;
import static org.proviso.journey.PageDriver.choose;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.said;
import static org.proviso.journey.PageDriver.text;
import static org.proviso.journey.PageDriver.type;
import static org.proviso.journey.PageDriver.wrong;

import com.vaadin.flow.component.checkbox.Checkbox;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.YesNo;
import org.proviso.core.act.ActResults;
import org.proviso.intake.IntakeService;
import org.proviso.intake.correction.CorrectionDraft;
import org.proviso.intake.correction.EnvelopeCorrectionService;
import org.proviso.ui.MessageLine;
import org.springframework.beans.factory.annotation.Autowired;

/** CorrectionView with its CorrectionForm and CorrectedCastForm: what was received and keyed is corrected on a page. */
@OnPages
class CorrectionPageTest {

    @Autowired
    private PageDriver pages;

    private static Envelope envelope(EnvelopeKey key) {
        return PagesOffice.the(IntakeService.class)
                .envelope(key.electionId(), key.envelopeNo())
                .orElseThrow();
    }

    @Test
    void wrong_fields_are_corrected_with_a_reason() {
        EnvelopeKey key = PagesOffice.key("P-1019");
        pages.on("intake/correct/P-1019", "jon", () -> {
            assertThat(said()).as("nothing in it was unlikely").doesNotContain("Kept as");
            type("place", "Nowhere Hall");
            type("date_of_birth", "3/12/1984");
            choose("extended", "yes");
            _get(Checkbox.class, box -> box.withLabel("no id")).setValue(true);
            press("Save correction");
            assertThat(wrong("because")).isEqualTo("Required. Say what the paper shows.");
            type("because", "Read again from the paper.");
            press("Save correction");
            assertThat(wrong("place")).startsWith("This election has no voting location \"Nowhere Hall\".");
            assertThat(envelope(key).cast().extendedHours()).isNotEqualTo(YesNo.YES);
            type("place", "Depot Street Library");
            press("Save correction");
            assertThat(MessageLine.words()).isEqualTo("Envelope P-1019 corrected. Its case was assessed anew.");
            assertThat(said()).contains("By jon: Read again from the paper.");
        });
        assertThat(envelope(key).cast().votingLocation()).isEqualTo("Depot Street Library");
        assertThat(envelope(key).cast().extendedHours()).isEqualTo(YesNo.YES);
        assertThat(envelope(key).cast().issueReasons()).contains("no_id");
        assertThat(envelope(key).affirmation().birthDate()).isEqualTo(LocalDate.of(1984, 3, 12));
    }

    @Test
    void what_somebody_changed_meanwhile_is_told_and_nothing_typed_is_lost() {
        EnvelopeKey key = PagesOffice.key("P-1020");
        pages.on("intake/correct/P-1020", "jon", () -> {
            type("phone", "555-0111");
            type("because", "Read again.");
            as("carl", () -> {
                EnvelopeCorrectionService corrections = PagesOffice.the(EnvelopeCorrectionService.class);
                CorrectionDraft draft = new CorrectionDraft(
                        key.electionId(),
                        corrections.find(key.electionId(), key.envelopeNo()).orElseThrow());
                draft.phone = "555-0222";
                return ActResults.accepted(corrections.correct(draft.command()));
            });
            press("Save correction");
            assertThat(said()).contains("Somebody changed this in the meantime.");
            assertThat(text("phone")).isEqualTo("555-0111");
            assertThat(text("because")).isEqualTo("Read again.");
            press("Load the new version");
            assertThat(text("phone")).isEqualTo("555-0222");
        });
    }
}
