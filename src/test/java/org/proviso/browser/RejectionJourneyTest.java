package org.proviso.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.intake.IntakeService;
import org.proviso.ui.frame.OfficeElections;

/** A ballot is rejected: a reviewer proposes it, somebody else reads it again, the board votes, the voter is told why. */
@Journey
class RejectionJourneyTest {

    private static final String NUMBER = "G-1012";

    @Test
    void a_rejection_takes_a_proposer_a_second_reader_and_a_vote_and_tells_its_reason(
            Browser browser, RunningOffice office) {
        browser.signIn("reviewer").go("/review/case/" + NUMBER);
        browser.look().press("t");
        browser.waitFor("Compare signature");
        assertThat(browser.text()).as("a blind look names nobody").doesNotContain("Garrity", "Ansell");
        browser.look().press("a");
        browser.waitFor("signature comparison recorded");
        browser.look().press("c");
        browser.waitFor("link confirmed");
        browser.look().press("p");
        browser.waitFor(NUMBER + " proposed: reject. Second review is next.");
        browser.go("/review/second/" + NUMBER);
        assertThat(browser.text()).as("nobody reads the own proposal again").doesNotContain("AgreeA");

        browser.signIn("second").go("/review/second/" + NUMBER);
        browser.waitFor("the voter registered after the deadline");
        browser.look().press("a");
        browser.find("vaadin-dialog-overlay textarea").sendKeys("The date was compared with the registration.");
        browser.find("vaadin-dialog-overlay button.first").click();
        browser.waitFor("you agreed. It goes to the decider");

        BoardDay day = BoardDay.opened(browser);
        assertThat(browser.text()).contains("the voter registered after the deadline");
        day.carry("Move to reject…");
        day.close();

        Envelope envelope = office.the(IntakeService.class)
                .envelope(office.the(OfficeElections.class).all().get(0).id(), new EnvelopeNumber(NUMBER))
                .orElseThrow();
        String told = VotersPhone.answer(
                browser,
                ReceiptNumber.text(envelope.receiptNo()),
                envelope.affirmation().birthDate());
        assertThat(told).contains("Your ballot was not counted", "Why", "registered");
        assertThat(Axe.findings(browser)).isEmpty();
        browser.resize(Window.DESK);
        browser.signIn("supervisor").go("/notices");
        assertThat(browser.text()).as("the letter is due").contains(NUMBER);
        assertThat(browser.complaints()).isEmpty();
    }
}
