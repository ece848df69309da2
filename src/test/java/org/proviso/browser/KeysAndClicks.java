package org.proviso.browser;

import java.util.function.Consumer;
import org.openqa.selenium.Keys;
import org.proviso.core.CheckedReceipt;

/**
 * A command that does the office's most frequent acts in the browser, in a fresh demonstration, and counts what a hand does
 * for each: keys, clicks, and the letters that the paper gives. Each act begins where the one before it of the same kind
 * ended.
 */
public final class KeysAndClicks {

    private static final String[] STATEMENTS = {"citizen", "resident", "not voted"};

    private final Browser browser;
    private final Keyboard hand;

    private KeysAndClicks(Browser browser) {
        this.browser = browser;
        this.hand = new Keyboard(browser);
    }

    public static void main(String[] arguments) {
        try (Browser browser = Browser.open(RunningOffice.shared().address(), Window.DESK)) {
            System.out.println("| act | keys | clicks | letters typed |");
            System.out.println("| --- | --- | --- | --- |");
            KeysAndClicks counts = new KeysAndClicks(browser);
            counts.takenIn();
            counts.reviewed();
            counts.decided();
            counts.opened();
            counts.told();
        }
        System.exit(0);
    }

    private void count(String act, Consumer<Keyboard> does) {
        hand.countAnew();
        try {
            does.accept(hand);
        } catch (RuntimeException | AssertionError e) {
            System.out.println("| " + act + " | not done: "
                    + e.getMessage().lines().findFirst().orElse("") + " | | |");
            return;
        }
        System.out.println("| " + act + " | " + hand.keys() + " | " + hand.clicks() + " | " + hand.letters() + " |");
    }

    private void takenIn() {
        browser.signIn("intake").go("/intake/receive");
        browser.fill("place", "Birch Hall Community Center")
                .fill("style", "T06")
                .fill("precinct", "301");
        browser.fill("envelope", "G-2501").fill("receipt", receipt("61030001"));
        browser.press(Keys.ENTER);
        browser.waitFor("G-2501");
        count("receive the next envelope of a bag", keys -> receive("G-2502", receipt("61030002")));
        browser.go("/intake");
        count("key an envelope", keys -> key("n", "G-2501"));
        browser.signIn("supervisor").go("/intake");
        count("key an envelope a second time", keys -> {
            browser.go("/intake/key/G-2501");
            typed("G-2501");
        });
    }

    private static String receipt(String eight) {
        return CheckedReceipt.of(eight).value();
    }

    private void receive(String number, String receipt) {
        hand.type(number).press(Keys.ENTER).type(receipt).press(Keys.ENTER).sees(number);
    }

    private void key(String start, String number) {
        hand.press(start).sees("Key " + number);
        typed(number);
    }

    private void typed(String number) {
        for (String words : new String[] {"DeGroot", "Hunter", "Justin", "", "", "5/30/2000"}) {
            hand.type(words).press(Keys.ENTER);
        }
        for (String words : new String[] {"899 Seventh St", "", "Millbrook", "49872", "", "", "", "", "", ""}) {
            hand.type(words).press(Keys.ENTER);
        }
        hand.type("D16225940").press(Keys.ENTER).type("1169");
        for (String statement : STATEMENTS) {
            hand.tabTo(statement).press(Keys.SPACE);
        }
        hand.fill("ID shown", "y").fill("Type of ID", "d").fill("Voter signed", "y");
        hand.fill("Poll worker signed", "y").fill("Envelope condition", "s");
        hand.together(Keys.CONTROL, Keys.ENTER).sees(number + " keyed");
    }

    private void reviewed() {
        browser.signIn("reviewer").go("/review/case/G-1044");
        browser.look().press("t");
        browser.waitFor("Compare signature");
        count("compare a signature on the case", keys -> keys.look().press("a").sees("signature comparison recorded"));
        count("propose what the rules recommend", keys -> keys.look().press("p").sees("G-1044 proposed"));
        browser.go("/review/case/G-1058");
        browser.look().press("t");
        browser.waitFor("Compare signature");
        browser.go("/review/case/G-1058");
        count("confirm a link on the case", keys -> keys.look().press("c").sees("link confirmed"));
        browser.go("/review/links");
        count(
                "confirm sure links together",
                keys -> keys.click("Tick all that are the same")
                        .clickOn(".sheet.together button.first")
                        .clickOn("vaadin-dialog-overlay button.first")
                        .sees("confirmed"));
        browser.go("/review/case/G-1012");
        browser.look().press("t");
        browser.waitFor("Compare signature");
        browser.look().press("a");
        browser.waitFor("signature comparison recorded");
        browser.look().press("c");
        browser.waitFor("link confirmed");
        browser.look().press("p");
        browser.waitFor("G-1012 proposed");
        browser.signIn("second").go("/review/second/G-1012");
        count(
                "agree as the second reviewer",
                keys -> keys.look()
                        .press("a")
                        .sees("Confirm that you read")
                        .clickOn("vaadin-dialog-overlay button.first")
                        .sees("It goes to the decider"));
    }

    private void decided() {
        BoardDay.opened(browser);
        String session = browser.driver().getCurrentUrl().replaceAll("^https?://[^/]+", "");
        count("decide one on the agenda: the member who moves, votes and closes", keys -> {
            keys.click("Move to count…").click("Make motion").sees("Motion on the floor");
            browser.signIn("board1").go(session);
            Keyboard other = new Keyboard(browser);
            other.click("Second the motion")
                    .click("Open the vote")
                    .sees("Still to vote")
                    .click("Yes");
            System.out.println("| the same: the member who seconds, opens the vote and votes | " + other.keys() + " | "
                    + other.clicks() + " | 0 |");
            browser.signIn("board2").go(session);
            keys.click("Yes").sees("All votes are in").click("Close the vote…").click("Close the vote");
            keys.sees("The vote is closed");
        });
    }

    private void opened() {
        browser.signIn("supervisor").go("/release");
        browser.click("Mail and in-person counting complete…");
        browser.click("Record as complete");
        browser.signIn("release1").go("/release");
        count("make a batch and begin to open it", keys -> {
            keys.click("Make a batch…");
            if (keys.reads("Why this envelope cannot wait")) {
                keys.clickOn("vaadin-dialog-overlay vaadin-text-field").type("It is the only one.");
            }
            keys.click("Make batch").sees("Batch 1 made").click("Batch 1").click("Begin opening");
            keys.sees("You began opening");
        });
        browser.signIn("release2").go("/release/batch/1");
        count(
                "record a batch as open",
                keys -> keys.clickOn("main vaadin-integer-field input")
                        .type("0")
                        .click("Record batch as open")
                        .sees("The batch is open"));
    }

    private void told() {
        browser.signIn("supervisor").go("/notices");
        count(
                "log a letter as sent",
                keys -> keys.click("Letter")
                        .press("l")
                        .sees("Cancel")
                        .clickOn("vaadin-dialog-overlay button.first")
                        .sees("Logged: the voter"));
    }
}
