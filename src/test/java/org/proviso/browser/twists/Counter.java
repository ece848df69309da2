package org.proviso.browser.twists;

import java.util.List;

/** What comes over the counter: letters, envelopes in the bag of a location that was silent, and what voters bring. */
final class Counter {

    /** Envelopes whose voters are asked for something. */
    static final List<String> ASKED =
            List.of("P-1009", "P-1013", "P-1016", "P-1018", "P-1022", "P-1034", "P-1046", "P-1053");

    private final Player player;

    Counter(Player player) {
        this.player = player;
    }

    /** Every letter is logged as sent; one is logged by mistake first. */
    void letters() {
        player.as("intake", "/notices/letter/P-1046/1")
                .press("Log notice")
                .press("Log notice")
                .see("Log returned mail");
        player.press("Take back attempt")
                .type("Reason", "The letter still lies on the desk. Another voter's went out.");
        player.picture("05-letter-logged-by-mistake");
        player.press("Take back attempt").see("Attempt taken back", "taken back: The letter still lies");
        for (String number : ASKED) {
            player.go("/notices/letter/" + number + "/1").press("Log notice").press("Log notice");
            player.see("Log returned mail");
        }
    }

    /** Two envelopes of the silent location: one without a receipt number, one with the number of another. */
    void receives() {
        player.as("intake", "/intake/receive").fill("place", TwistsOffice.WITHOUT_RETURN);
        one("4:40 pm", "501", "P-1061");
        player.press("Receive envelope").see("Required. If none is printed on the envelope");
        player.picture("10-no-receipt-number");
        player.press("No receipt number").press("Receive envelope").see("P-1061 received.");
        for (String left : List.of("style", "precinct", "party-ballot", "cast-time", "envelope", "receipt")) {
            player.holds(left, "");
        }
        player.holds("place", TwistsOffice.WITHOUT_RETURN).picture("15-next-envelope-begins-empty");
        one("4:55 pm", "601", "P-1062");
        player.fill("receipt", "4340-5313-8").press("Receive envelope").see("This receipt number is also on P-1014.");
        player.press("Keep it").press("Receive envelope").see("P-1062 received.");
        player.go("/intake").see("Numbers to settle", "no receipt number", "receipt number also on P-1014");
        player.picture("10-numbers-to-settle");
        player.press("Confirm P-1061").type("Reason", "The slip was torn off. The poll worker says so too.");
        player.press("Confirm as it is").see("confirmed: The slip was torn off.");
        player.press("Correct receipt number of P-1062").type("Receipt number", TwistsOffice.FREE_RECEIPT);
        player.type("Reason", "Read again under the lamp.").press("Save number");
        player.see("Receipt number of P-1062 corrected.");
    }

    private void one(String time, String precinct, String number) {
        player.fill("cast-time", time)
                .fill("style", "T05-H")
                .fill("precinct", precinct)
                .fill("party-ballot", "Harbor");
        player.option("reason", "not on list").fill("envelope", number);
    }

    void keys() {
        key("P-1061", "Keller", "Alicia", "Ana", "5/14/1997", "3394 Monroe Ln", "1109");
        key("P-1062", "Brandt", "Nicholas", "Phillip", "9/22/1982", "3231 Monroe Ln", "6309");
    }

    private void key(
            String number, String last, String first, String middle, String born, String street, String last4) {
        player.go("/intake/key/" + number)
                .fill("last_name", last)
                .fill("first_name", first)
                .fill("middle_name", middle);
        player.fill("date_of_birth", born)
                .fill("residence_address_line", street)
                .fill("city", "Cedar Forks");
        player.fill("zip", "49876").fill("id_last4", last4).fill("party", "Harbor");
        player.tickAll().option("id_shown", "yes").option("id_kind", "driver").option("voter_signed", "yes");
        player.option("official_signed", "yes").option("envelope_condition", "sealed");
        player.press("Finish keying").see(number + " keyed");
    }

    /** The envelope was received with the precinct of another location. */
    void corrects() {
        player.go("/intake/correct/P-1061").fill("precinct", "601").fill("because", "The paper says precinct 601.");
        player.press("Save correction").see("Envelope P-1061 corrected.", "Corrections so far");
        player.picture("05-wrong-precinct-corrected");
    }

    /** Evidence is recorded on the wrong envelope, taken back, and recorded where it belongs. */
    void cures() {
        evidence("P-1016");
        player.see("In time").picture("05-evidence-on-the-wrong-envelope");
        player.press("Take back evidence").type("Reason", "The license is Mr. Tran's, envelope P-1022.");
        player.press("Take back evidence").see("Evidence of envelope P-1016 taken back.");
        evidence("P-1022");
        player.see("In time");
        evidence("P-1009");
        player.see("In time");
    }

    private void evidence(String number) {
        player.go("/intake/cure").fill("sought", number).see(number + ",").option("kind", "bring or send");
        player.fill("words", "Driver's license, shown at the counter").press("Record evidence");
        player.see("Evidence recorded for envelope " + number);
    }

    /** The return of the silent location is fetched and typed in. */
    void lateReturn() {
        player.as("intake", "/intake/transmittals").fill("place", TwistsOffice.WITHOUT_RETURN);
        player.fill("day", "8/4/2026")
                .fill("bag", "B10")
                .fill("seal-out", "029420")
                .fill("seal-in", "029420");
        player.fill("supplied", "60")
                .fill("issued", "4")
                .fill("spoiled", "0")
                .fill("unused", "56")
                .fill("returned", "4");
        player.fill("in-error", "0")
                .fill("loose", "0")
                .press("Record transmittal")
                .see("029420, 029420");
    }
}
