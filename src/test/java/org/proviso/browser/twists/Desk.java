package org.proviso.browser.twists;

/** What happens at the reviewers' desks. */
final class Desk {

    private static final String PARTY_LAW = "Example Election Code (invented) 5.5 (2020)";

    private final Player player;

    Desk(Player player) {
        this.player = player;
    }

    /** Takes the case of the envelope, also where the desk handed it over already, and compares the signature. */
    private void taken(String number) {
        player.go("/review/case/" + number);
        if (player.offers("Take this case")) {
            player.press("Take this case");
            player.browser().look();
        }
        if (player.offers("Compare without the name")) {
            player.go("/review/signature/" + number);
        }
        if (player.text().contains("No signature of this voter is on file here")
                || player.text().contains("Look at the voter's card")) {
            player.type("Note", "Compared with the registration card.").press("Signature agrees");
            player.see("signature comparison recorded");
        } else if (player.offers("Signature agrees")) {
            player.key("a").see("signature comparison recorded");
        }
    }

    /** The desk hands out the next case by itself, so either of the two may have it already; who does. */
    private String whoseTurn(String number) {
        String has = player.as("reviewer", "/review/case/" + number).text().contains("Assigned to Ben Okafor")
                ? "second"
                : "reviewer";
        player.as(has, "/review");
        return has;
    }

    /** A plain case: the signature agrees, the record is the voter's, it counts. */
    void plain(String number) {
        whoseTurn(number);
        taken(number);
        player.see("ropose count").key("p").see(number + " proposed: count");
    }

    /** Whom the envelope is from was read wrong; the comparison was of another person's signature. */
    void anotherVoter() {
        player.as("reviewer", "/review");
        taken("P-1026");
        voter("Frazier, Austin", "Read the first name as Austin.");
        player.see("The first comparison is made without the voter's name", "the signature has not been compared yet")
                .picture("12-finding-voided");
        voter("Frazier, Nathan", "The middle name is Mark, as on the envelope.");
        player.go("/review/signature/P-1026").key("a").see("signature comparison recorded");
        player.key("p").see("P-1026 proposed: count");
    }

    private void voter(String name, String because) {
        player.press("Choose another voter")
                .type("Search the roll by name", "Frazier\t")
                .press(name);
        player.type("Reason", because).press("Link voter").see("is linked to " + name);
    }

    /** Somebody counts what the rules reject; a different reviewer has to read it. */
    void againstTheRules() {
        player.as("reviewer", "/review");
        taken("P-1028");
        player.key("c")
                .see("link confirmed")
                .press("Propose a different outcome")
                .press("count");
        player.type("Legal reference", PARTY_LAW);
        player.type("Why you propose a different outcome", "The poll worker handed out the wrong party's ballot.");
        player.see("a different reviewer does the second review").picture("11-count-against-the-rules");
        player.press("Submit proposal").see("P-1028 proposed: count. Second review is next.");
        player.go("/review/second/P-1028").cannot("Agree");
        player.as("second", "/review/second/P-1028").see("This goes against the rules' answer, which is: reject.");
        player.picture("11-second-reader");
        player.press("Agree").press("Agree").see("you agreed. It goes to the decider.");
    }

    /** A reviewer is away with a case in hand; a supervisor hands it back to the queue. */
    void heldBySomebodyAbsent() {
        player.as("reviewer", "/review");
        taken("P-1015");
        player.as("second", "/review/case/P-1015")
                .see("Assigned to Ada Lovering")
                .cannot("Take this case");
        player.as("supervisor", "/review/case/P-1015").press("Release case").type("Reason", "Ada is ill until Monday.");
        player.picture("07-case-of-somebody-absent").press("Release case").see("P-1015");
        player.as("second", "/review/case/P-1015").see("Ada is ill until Monday.");
        taken("P-1015");
        player.key("p").see("P-1015 proposed: count");
    }

    /** A question to the voting location, and its answer. */
    void research() {
        player.as("reviewer", "/review");
        taken("P-1025");
        player.press("Request research").type("Whom you ask", "Fairgrounds Pavilion, chief judge");
        player.type("What to find out", "Did the voter say on which day she moved?")
                .press("Request research");
        player.see("research requested. The case waits for the result.");
        player.as("second", "/review/research").see("Did the voter say on which day she moved?");
        player.picture("07-research").press("Record research result").type("Result", "On July 27. She said so.");
        player.press("Record result").see("Result recorded on envelope P-1025.");
        player.as("reviewer", "/review/case/P-1025").see("On July 27. She said so.");
        taken("P-1025");
        player.key("p").see("P-1025 proposed: count");
    }

    /** The voter lives in another county: two people send the envelope there. */
    void sendsOn() {
        player.as("reviewer", "/review");
        taken("P-1044");
        player.press("Record a search");
        for (String place : new String[] {
            "cancelled registrations", "unfinished applications", "motor-vehicle", "the state's list", "former names"
        }) {
            player.press(place);
        }
        player.press("a registration in another county").press("Record search").see("search recorded");
        proposesToSendOn();
        player.as("reviewer", "/review/sent-on")
                .see("P-1044", "Alder County", "None yet")
                .picture("04-sent-on");
    }

    void proposesToSendOn() {
        player.press("Propose to send on")
                .type("County it goes to", "Alder County")
                .press("Submit proposal");
        player.see("P-1044 proposed: send on to Alder County. Second review is next.");
        player.as("second", "/review/second/P-1044")
                .press("Confirm: send on")
                .press("Confirm")
                .see("sent on to Alder County");
    }

    /** What its recommendation is: proposed by one reviewer, read by the other. */
    void proposedAndReadAgain(String number) {
        String other = whoseTurn(number).equals("second") ? "reviewer" : "second";
        taken(number);
        player.see("Propose").key("p").see(number + " proposed");
        player.as(other, "/review/second/" + number)
                .press("Agree")
                .press("Agree")
                .see("you agreed");
    }

    /** The other county sent its receipt; later the envelope came back and is opened again, and sent on once more. */
    void sentOnIsUndone() {
        player.as("reviewer", "/review/case/P-1044").press("Record receipt").type("Day it was received", "8/6/2026");
        player.type("Received there by", "Alder County Clerk");
        player.picture("04-county-receipt").press("Record receipt").see("receipt recorded.");
        player.as("supervisor", "/review/case/P-1044")
                .press("Reopen")
                .type("Reason", "Alder County sent it back by mistake.");
        player.picture("04-sent-on-undone").press("Reopen case").see("P-1044 reopened.");
        player.as("reviewer", "/review");
        taken("P-1044");
        proposesToSendOn();
    }
}
