package org.proviso.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.proviso.core.CheckedReceipt;

/**
 * One envelope from the bag to the voter's telephone, by nine people none of whom has a mouse: received, keyed twice,
 * reviewed, read by a second reviewer, voted on by the board, opened, remade, handed off and looked up; a letter is logged.
 */
@Journey
class WholeJobByKeyboardTest {

    private static final String NUMBER = "G-2300";
    private static final String RECEIPT = CheckedReceipt.of("44067719").value();

    private static final Pattern BALLOTS = Pattern.compile(": (\\d+) ballots?, \\d+ empty");

    @Test
    void an_envelope_is_settled_by_keys_alone(Browser browser) {
        Keyboard keys = new Keyboard(browser);
        receive(keys);
        key(keys, "intake", "Envelope or receipt number");
        key(keys, "supervisor", "Envelope or receipt number");
        propose(keys);
        agree(keys);
        decide(keys, browser);
        open(keys, browser);
        tell(keys);
        browser.driver().manage().deleteAllCookies();
        browser.go("/status");
        keys.fill("Receipt number", RECEIPT)
                .fill("Month", "5")
                .fill("Day", "30")
                .fill("Year", "2000");
        keys.press(Keys.ENTER).sees("counted in part");
        assertThat(browser.complaints()).isEmpty();
    }

    private static void receive(Keyboard keys) {
        keys.signIn("intake").enter("Intake").sees("Returns from voting locations");
        keys.press("r").sees("For the whole bag");
        keys.main().fill("Voting location", "Birch Hall Community Center");
        keys.fill("Ballot style", "T06").fill("Precinct", "301").fill("Time cast", "6:10 pm");
        keys.fill("Envelope number", NUMBER).fill("Receipt number", RECEIPT).press(Keys.ENTER);
        keys.sees(NUMBER);
    }

    private static void key(Keyboard keys, String clerk, String search) {
        keys.signIn(clerk).enter("Intake").sees("Returns from voting locations");
        // Another envelope may wait to be keyed, and then the list shows only those.
        keys.main()
                .fill("Show", "All")
                .fill(search, NUMBER)
                .look()
                .row(NUMBER, false)
                .sees("Key " + NUMBER);
        for (String words : new String[] {"DeGroot", "Hunter", "Justin", "", "", "5/30/2000"}) {
            keys.type(words).press(Keys.ENTER);
        }
        for (String words : new String[] {"899 Seventh St", "", "Millbrook", "49872", "", "", "", "", "", ""}) {
            keys.type(words).press(Keys.ENTER);
        }
        keys.type("D16225940").press(Keys.ENTER).type("1169");
        for (String statement : new String[] {"citizen", "resident", "not voted"}) {
            keys.tabTo(statement).press(Keys.SPACE);
        }
        keys.fill("ID shown", "yes").fill("Type of ID", "driver").fill("Voter signed", "yes");
        keys.fill("Poll worker signed", "yes").fill("Envelope condition", "sealed");
        keys.together(Keys.CONTROL, Keys.ENTER).sees(NUMBER + " keyed");
    }

    private static void propose(Keyboard keys) {
        keys.signIn("reviewer").enter("Review").sees("Voting location");
        keys.press("/").type(NUMBER).press(Keys.ENTER).enter(NUMBER).sees("Envelope " + NUMBER);
        keys.look().press("t").sees("Compare signature").press("s").sees("You will see the voter's name");
        keys.look().press("a").sees("signature comparison recorded");
        keys.look().press("c").sees("link confirmed");
        keys.look().press("p").sees(NUMBER + " proposed: count in part. Second review is next.");
    }

    private static void agree(Keyboard keys) {
        keys.signIn("second")
                .enter("Review")
                .sees("Voting location")
                .enter("Second review")
                .sees("Proposed by");
        keys.main().row(NUMBER, false).sees("Agree");
        keys.look().press("a").sees("Confirm that you read the case yourself.");
        keys.fill("Note (optional)", "The ballot style was looked up again.")
                .enter("Agree")
                .sees("It goes to the decider");
    }

    private static void decide(Keyboard keys, Browser browser) {
        keys.signIn("supervisor").enter("Setup").sees("Clock").enter("Clock").sees("Move past a deadline");
        if (keys.reads("Envelopes may be decided")) {
            keys.enter("Envelopes may be decided: Thu, Nov 5, 9:00 am").sees("The clock was moved");
        }
        keys.signIn("board1")
                .enter("Board")
                .sees("Call a session")
                .enter("Call a session…")
                .sees("Cancel");
        keys.enter("Call session").sees("The session is not open yet").enter("Open session");
        keys.sees("The session is open.").enter("Add all ready envelopes").sees(NUMBER);
        keys.enter("Record my arrival").sees("You are recorded as present");
        String session = browser.find("h1").getText();
        keys.signIn("board2").enter("Board").sees(session).enter(session).enter("Record my arrival");
        keys.sees("You are recorded as present").tabToBegins("Move").press(Keys.ENTER);
        keys.sees("Make motion");
        keys.enter("Make motion").sees("Motion on the floor");
        keys.signIn("board1")
                .enter("Board")
                .enter(session)
                .enter("Second the motion")
                .sees("You seconded");
        keys.enter("Open the vote").sees("Still to vote").enter("Yes").sees("You voted yes");
        keys.signIn("board2").enter("Board").enter(session).enter("Yes").sees("All votes are in");
        keys.enter("Close the vote…").sees("Cancel").enter("Close the vote").sees("The vote is closed");
        keys.enter("Close session…").sees("Cancel").enter("Close session").sees("The session is closed.");
    }

    private static void open(Keyboard keys, Browser browser) {
        keys.signIn("supervisor").enter("Release").sees("Envelopes to open");
        if (keys.reads("counting complete…")) {
            keys.enter("Mail and in-person counting complete…")
                    .enter("Record as complete")
                    .sees("Recorded:");
        }
        keys.signIn("release1").enter("Release").enter("Make a batch…").sees("Cancel");
        if (keys.reads("Why this envelope cannot wait")) {
            keys.fill("Why this envelope cannot wait for others", "It is the only one.");
        }
        keys.enter("Make batch")
                .sees("Batch 1 made")
                .enter("Batch 1")
                .enter("Begin opening")
                .sees("You began opening");
        keys.signIn("release2")
                .enter("Release")
                .sees("Batch 1")
                .enter("Batch 1")
                .fill("Empty envelopes", "0");
        keys.enter("Record batch as open")
                .sees("The batch is open")
                .enter("Begin copying")
                .sees("You began copying");
        keys.signIn("release1")
                .enter("Release")
                .sees("Batch 1")
                .enter("Batch 1")
                .enter("Remake verified")
                .sees("remade.");
        Matcher ballots = BALLOTS.matcher(browser.text());
        assertThat(ballots.find()).as("how many ballots are in the batch").isTrue();
        keys.fill("Ballots counted", ballots.group(1)).enter("Hand off ballots").sees("Ballots handed off");
    }

    /** The example's rules send no letter about a count in part; the first one due is logged. */
    private static void tell(Keyboard keys) {
        keys.signIn("intake").enter("Notices").sees("letters to send");
        keys.main().row("G-1001", true).sees("Letter about envelope G-1001");
        keys.press("l").sees("Cancel").enter("Log notice").sees("Logged: the voter of envelope G-1001");
    }
}
