package org.proviso.notices.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.mvysny.kaributesting.v10.MockVaadin;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.ui.field.ActDialog;

/** The moment that somebody logs: what is wrong with it is said at its box, everything else on the sheet. */
class MomentFieldTest {

    private static final LocalDateTime NOW = LocalDateTime.of(2026, 8, 5, 12, 0, 30);

    @BeforeEach
    void aPage() {
        MockVaadin.setup();
    }

    @AfterEach
    void noPage() {
        MockVaadin.tearDown();
    }

    private static ActResult.Refused<String> refused(Refusal refusal) {
        return new ActResult.Refused<>(List.of(refusal));
    }

    @Test
    void a_refusal_of_the_moment_stands_at_its_box_and_not_on_the_sheet() {
        MomentField at = new MomentField("Sent", "sentAt", NOW);
        ActDialog sheet = new ActDialog("Log notice", "Log notice", () -> true);
        assertThat(at.getValue()).isEqualTo(NOW.withSecond(0));
        assertThat(at.refuse(refused(Refusal.at("sentAt", Why.MOMENT_NOT_POSSIBLE, "Too early.")), sheet))
                .isFalse();
        assertThat(at.isInvalid()).isTrue();
        assertThat(at.getErrorMessage()).isEqualTo("Too early.");
        assertThat(sheet.getElement().getTextRecursively()).doesNotContain("Too early.");
    }

    @Test
    void a_refusal_of_anything_else_stands_on_the_sheet_and_not_at_the_box() {
        MomentField at = new MomentField("Sent", "sentAt", NOW);
        ActDialog sheet = new ActDialog("Log notice", "Log notice", () -> true);
        assertThat(at.refuse(refused(Refusal.of(Why.ELECTION_CLOSED, "The election is closed.")), sheet))
                .isFalse();
        assertThat(at.isInvalid()).isFalse();
        assertThat(sheet.getElement().getTextRecursively()).contains("The election is closed.");
    }
}
