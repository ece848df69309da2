package org.proviso.browser.twists;

import static org.proviso.browser.twists.TwistsOffice.ONE_TOO_MANY;

/** Adding up and closing, by the two supervisors. */
final class Figures {

    private static final String HALF = "Foundry Arts Center";

    private final Player player;

    Figures(Player player) {
        this.player = player;
    }

    /** The office's word on a value that no source gives: one supervisor records it, another puts it in force. */
    void rules() {
        player.as("supervisor", "/set-up/rulings").option("rule", "Whether a member who is present and recused");
        player.option("value", "no").fill("signed-by", "County Clerk").fill("on", "8/6/2026");
        player.fill("ground", "counsel's letter of August 5").press("Record ruling");
        player.see("Another supervisor has to put it in force.").cannot("Put ruling in force");
        player.as("supervisor2", "/set-up/rulings")
                .see("counsel's letter")
                .picture("16-ruling-waits-for-a-second-person");
        player.press("Put ruling in force").see("is in force. Open cases were reassessed.");
    }

    /** What only people know is typed into the sheet like into the paper form. */
    void fillsTheSheet() {
        player.as("supervisor", "/canvass/sheet").fill("source", "Closing forms, poll lists, tabulator's report");
        for (String of : new String[] {"Supplied", "Issued", "Spoiled", "Unused", "Sent back"}) {
            player.box(of + ", " + HALF + ",", "0");
        }
        player.box("Supplied, " + HALF + " in extended hours", "60")
                .box("Issued, " + HALF + " in extended hours", "13");
        player.box("Spoiled, " + HALF + " in extended hours", "0").box("Unused, " + HALF + " in extended hours", "47");
        player.box("Sent back, " + HALF + " in extended hours", "13");
        player.emptyBoxes("Missing,", "0").emptyBoxes("Absent, explained,", "0");
        for (String of : new String[] {"The county", "The county in extended hours"}) {
            String ballots = player.cell("Handed off", of);
            player.box("Tabulated, " + of + ",", ballots).box("Credit for voting, " + of + ",", ballots);
        }
        player.picture("06-sheet-of-balances");
        player.press("Save sheet").see("Saved: ");
    }

    /** A total that cannot be put right is explained by one supervisor and signed by another. */
    void explains() {
        player.go("/canvass").see(ONE_TOO_MANY + " sent back 3 envelopes and logged 2.");
        player.press("Show the bags").picture("06-behind-a-difference");
        while (player.offers("Explain difference: " + ONE_TOO_MANY)) {
            player.press("Explain difference: " + ONE_TOO_MANY);
            player.type(
                    "What happened", "The closing form says 3. Bag B08 held 2 under its seal, counted by two people.");
            player.press("Write explanation").see("Another supervisor has to sign it.");
        }
        player.cannot("Sign explanation");
        player.as("supervisor2", "/canvass");
        while (player.offers("Sign explanation")) {
            player.press("Sign explanation").see("Signed. The total counts as explained.");
        }
        player.picture("06-explained-by-two");
    }

    void nothingIsMissing() {
        player.as("supervisor", "/canvass/closing").see("Nothing is missing. The election can be closed.");
        player.picture("17-nothing-is-missing");
    }

    void closes() {
        player.as("supervisor", "/canvass").press("Save today's figures").see("figures saved");
        player.press("Close the election").press("Close election").see("The election is closed. Ledger chain head:");
        player.go("/canvass").see("Hash of the ledger's head:").picture("17-closed");
    }

    /** After closing nothing about a case can be changed; two supervisors reopen the canvass for a court's order. */
    void reopensAfterClosing() {
        player.as("supervisor", "/intake/correct/P-1061").see("closed").picture("08-after-closing");
        player.go("/canvass").press("Ask to reopen canvass").type("Reason", "The court orders P-1058 counted.");
        player.press("Ask to reopen canvass").see("Someone has asked to reopen the canvass");
        player.as("supervisor2", "/canvass")
                .press("Reopen canvass")
                .press("Reopen canvass")
                .see("by two people");
        player.picture("08-canvass-reopened");
    }

    /** What the order changed: one ballot more. */
    void closesAgain() {
        player.as("supervisor", "/canvass/sheet").fill("source", "Tabulator's second report");
        String ballots = player.cell("Handed off", "The county");
        player.box("Tabulated, The county,", ballots).box("Credit for voting, The county,", ballots);
        player.press("Save sheet").see("Saved: ");
        player.as("supervisor2", "/canvass").press("Close the election").press("Close election");
        player.see("The election is closed. Ledger chain head:");
        player.go("/canvass").see("Amended and closed again", "P-1058").picture("08-amended-certificate");
    }
}
