package org.proviso.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** An envelope comes in by hand, is keyed, reviewed, counted by the board, and its voter reads so on a telephone. */
@Journey
class KeyToStatusJourneyTest {

    private static final String NUMBER = "G-2001";
    private static final String RECEIPT = "4817-2206-5";

    private static void takeIn(Browser clerk) {
        clerk.signIn("intake").go("/intake/receive");
        clerk.fill("place", "Depot Street Library");
        clerk.fill("cast-time", "6:10 pm");
        clerk.fill("style", "T02");
        clerk.fill("precinct", "107");
        clerk.fill("envelope", NUMBER);
        clerk.fill("receipt", RECEIPT);
        clerk.click("Receive envelope");
        clerk.waitFor("not keyed");
    }

    private static void key(Browser clerk) {
        clerk.go("/intake/key/" + NUMBER);
        clerk.fill("last_name", "Mayhew").fill("first_name", "Robert").fill("middle_name", "Allen");
        clerk.fill("date_of_birth", "1/21/1956");
        clerk.fill("residence_address_line", "942 Galway St").fill("city", "Millbrook");
        clerk.fill("zip", "49871").fill("drivers_license", "M63202516").fill("id_last4", "4403");
        clerk.script("document.querySelectorAll('main input[type=checkbox]').forEach(box => box.click())");
        clerk.choose("id_shown", "yes").choose("id_kind", "driver");
        clerk.choose("voter_signed", "yes").choose("official_signed", "yes");
        clerk.choose("envelope_condition", "sealed");
        clerk.click("Finish keying");
        clerk.waitFor(NUMBER + " keyed");
    }

    private static void propose(Browser reviewer) {
        reviewer.signIn("reviewer").go("/review/case/" + NUMBER);
        reviewer.look().press("t");
        reviewer.go("/review/signature/" + NUMBER);
        assertThat(reviewer.text()).contains("No scan of this envelope's signature. Look at the envelope");
        reviewer.look().press("a");
        reviewer.waitFor("signature comparison recorded");
        reviewer.look().press("c");
        reviewer.waitFor("link confirmed");
        reviewer.look().press("p");
        reviewer.waitFor(NUMBER + " proposed: count");
    }

    @Test
    void an_envelope_is_keyed_reviewed_and_counted_and_its_voter_reads_that_it_was(Browser browser) {
        takeIn(browser);
        key(browser);
        propose(browser);
        LocalDate born = LocalDate.of(1956, 1, 21);
        assertThat(VotersPhone.answer(browser, RECEIPT, born)).contains("We are looking at your ballot");
        browser.resize(Window.DESK);
        BoardDay day = BoardDay.opened(browser);
        assertThat(Axe.findings(browser)).as("the session").isEmpty();
        day.carry("Move to count…");
        String minutes = browser.href("Minutes");
        browser.go(browser.href("Room display") + "?hold");
        browser.waitFor("carried");
        assertThat(browser.text())
                .as("the room reads no names")
                .contains(NUMBER)
                .doesNotContain("Mayhew");
        assertThat(Axe.findings(browser)).as("the display in the room").isEmpty();
        browser.go(minutes);
        browser.waitFor("carried");
        assertThat(Axe.findings(browser)).as("the minutes").isEmpty();
        day.close();
        assertThat(VotersPhone.answer(browser, RECEIPT, born)).contains("Your ballot was counted");
        assertThat(Axe.findings(browser)).isEmpty();
        assertThat(VotersPhone.answer(browser, RECEIPT, born.plusDays(1))).doesNotContain("counted");
        assertThat(browser.complaints()).isEmpty();
    }
}
