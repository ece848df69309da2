package org.proviso.browser.twists;

/** The sessions of the board: three members, one of them without a device. */
final class BoardRoom {

    private final Player player;

    BoardRoom(Player player) {
        this.player = player;
    }

    /** Calls a session and opens it with all that is ready; two members are there. */
    void opens(int number) {
        String session = "/board/session/" + number;
        player.as("board1", "/board")
                .press("Call a session")
                .press("Call session")
                .see("The session is not open yet");
        player.press("Open session").see("The session is open.").press("Add all ready envelopes");
        player.press("Record my arrival").see("You are recorded as present");
        player.as("board2", session).press("Record my arrival").see("You are recorded as present");
    }

    /** One member knows the voter: nothing can be pressed any more about that envelope. */
    void recuses(int session, String number) {
        player.as("board1", "/board/session/" + session)
                .press("Recuse " + number)
                .type("Reason", "The voter is my neighbor.")
                .press("Recuse");
        player.see("You are recused from envelope " + number).cannot("Recuse " + number);
        player.press("Pull out " + number)
                .see(number + " pulled out of its group.")
                .cannot("Move: " + number);
    }

    /** A member without a device says the vote aloud, and another member records it. */
    void recordsAVote(int number) {
        player.as("board2", "/board/session/" + number);
        player.choose("Record another member's arrival", "Esther Quist").see("Esther Quist is recorded as present.");
        player.press("Move P-1028").see("The rules recommend").press("Move and open the vote");
        player.see("If the vote is tied:", "If the motion fails:").picture("11-what-a-tie-means");
        player.press("Record a member's vote").choose("Member", "Esther Quist").press("Yes");
        player.picture("07-vote-said-aloud").press("Record vote").see("Vote recorded for Esther Quist.");
        player.press("Yes").see("You voted yes");
        player.as("board1", "/board/session/" + number).press("No").see("All votes are in");
        player.press("Close the vote…").press("Close the vote").see("The vote is closed");
    }

    /** Somebody closed the session before it was done. */
    void closedByMistake(int number) {
        closes(number);
        player.press("Reopen session…").type("Reason", "Closed by mistake: the agenda is not done.");
        player.picture("07-session-reopened").press("Reopen session").see("The session is open again.");
        player.press("Record my arrival").see("You are recorded as present");
        player.as("board1", "/board/session/" + number)
                .press("Record my arrival")
                .see("You are recorded as present");
        player.choose("Record another member's arrival", "Esther Quist").see("Esther Quist is recorded as present.");
    }

    /** Group after group, and then what stands alone. */
    void carriesAll(int session) {
        player.as("board2", "/board/session/" + session);
        while (player.offers("Move to")) {
            player.press("Move to").press("Move and open the vote").see("The vote is open");
            carried();
        }
        while (player.offers("Move…")) {
            player.press("Move…").press("Move and open the vote").see("The vote is open");
            carried();
        }
    }

    private void carried() {
        player.press("Everyone says yes")
                .see("All votes are in")
                .press("Close the vote…")
                .press("Close the vote");
        player.see("The vote is closed");
    }

    /** The contradicted decisions come on the agenda, and the board reopens each. */
    void reopens(int number, String... envelopes) {
        player.as("board2", "/board/session/" + number);
        for (String envelope : envelopes) {
            player.go("/board/contradicted").press("Add to agenda " + envelope);
            player.go("/board/session/" + number)
                    .press("Move to reopen or let stand " + envelope)
                    .press("Reopen");
            player.type("Reason", "A newer list says otherwise.")
                    .press("Move and open the vote")
                    .see("The vote is open");
            carried();
        }
    }

    void closes(int session) {
        player.as("board2", "/board/session/" + session)
                .press("Close session…")
                .press("Close session")
                .see("The session is closed.");
    }
}
