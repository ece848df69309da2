package org.proviso.browser.twists;

/** Opening the envelopes that count, by the two of the release team. */
final class Opening {

    private final Player player;

    Opening(Player player) {
        this.player = player;
    }

    void otherBallotsAreComplete() {
        player.as("supervisor", "/release")
                .press("Mail and in-person counting complete…")
                .press("Record as complete");
        player.see("Recorded: mail and in-person counting is complete.");
    }

    /** Puts everything that is selected into a batch. */
    void makesBatch(int number) {
        player.as("release1", "/release")
                .press("Make a batch…")
                .press("Make batch")
                .see("Batch " + number + " made.");
    }

    /** A court holds one of the envelopes: the batch stops at it, and goes on without it. */
    void takesOut(int batch, String number) {
        player.as("release1", "/release/batch/" + batch)
                .see(number)
                .press("Begin opening")
                .see("stay closed");
        player.picture("02-a-held-envelope-stops-the-batch");
        player.type("Reason to take it out", "The court holds it.")
                .press("Take envelope out")
                .see(number + " is out of the batch.");
    }

    /** Two people dissolve it. */
    void dissolves(int batch) {
        player.as("release1", "/release/batch/" + batch)
                .type("Reason to dissolve the batch", "A newer list is expected.");
        player.press("Ask to dissolve batch").see("Another team member dissolves the batch or keeps it.");
        player.as("release2", "/release/batch/" + batch).see("asked to dissolve this batch");
        player.picture("02-dissolved-by-two").press("Dissolve batch").see("Dissolved by Frank Sumner and Gail Ortiz");
    }

    /** One envelope alone, with the reason that it cannot wait for others. */
    void makesBatchOfOne(int number) {
        player.as("release1", "/release")
                .press("Make a batch…")
                .type("Why this envelope", "The court's deadline is today.");
        player.press("Make batch").see("Batch " + number + " made.");
    }

    /** Of what is left, court-extended hours, all is selected by hand. */
    void makesBatchOfExtendedHours(int number) {
        player.as("release1", "/release").selectAll().press("Make a batch…").press("Make batch");
        player.see("Batch " + number + " made.");
    }

    /** Two people open it, copy what counts in part, and hand it off. */
    void opens(int batch) {
        String page = "/release/batch/" + batch;
        player.as("release1", page).press("Begin opening").see("You began opening the batch.");
        player.as("release2", page)
                .type("Empty envelopes", "0")
                .press("Record batch as open")
                .see("The batch is open.");
        while (player.offers("Begin copying")) {
            player.press("Begin copying").see("You began copying");
        }
        player.as("release1", page);
        while (player.offers("Remake verified")) {
            player.press("Remake verified").see("remade.");
        }
        int ballots = player.number("Opened by .*: (\\d+) ballots?");
        player.type("Ballots counted", String.valueOf(ballots))
                .press("Hand off ballots")
                .see("handed off to tabulation");
    }
}
