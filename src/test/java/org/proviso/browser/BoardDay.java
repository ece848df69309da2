package org.proviso.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A session of the board as two of its members hold it, each signing in to do their own part. */
final class BoardDay {

    private static final Pattern NUMBER = Pattern.compile("board/session/(\\d+)");

    private final Browser browser;
    private final String session;

    private BoardDay(Browser browser, String session) {
        this.browser = browser;
        this.session = session;
    }

    /** Calls a session when envelopes may be decided, opens it, puts all that is ready on its agenda; both are there. */
    static BoardDay opened(Browser browser) {
        browser.signIn("supervisor").go("/set-up/clock");
        if (browser.text().contains("Envelopes may be decided")) {
            browser.clickBegins("Envelopes may be decided");
            browser.waitFor("The clock was moved");
        }
        browser.signIn("board1").go("/board");
        browser.click("Call a session…");
        browser.click("Call session");
        browser.waitFor("The session is not open yet");
        Matcher number = NUMBER.matcher(browser.driver().getCurrentUrl());
        if (!number.find()) {
            throw new AssertionError("no session at " + browser.driver().getCurrentUrl());
        }
        browser.click("Open session");
        browser.waitFor("The session is open.");
        browser.click("Add all ready envelopes");
        browser.click("Record my arrival");
        browser.waitFor("You are recorded as present");
        BoardDay day = new BoardDay(browser, "/board/session/" + number.group(1));
        browser.signIn("board2").go(day.session);
        browser.click("Record my arrival");
        browser.waitFor("You are recorded as present");
        return day;
    }

    /** One member moves what the button says, the other seconds it; both vote yes, and the vote is closed. */
    void carry(String button) {
        browser.signIn("board2").go(session);
        browser.click(button);
        browser.click("Make motion");
        browser.signIn("board1").go(session);
        browser.click("Second the motion");
        browser.click("Open the vote");
        browser.waitFor("Still to vote");
        oneScreen();
        browser.click("Yes");
        browser.waitFor("You voted yes");
        browser.signIn("board2").go(session);
        browser.click("Yes");
        browser.waitFor("All votes are in");
        browser.click("Close the vote…");
        browser.click("Close the vote");
        browser.waitFor("The vote is closed");
    }

    /** On the least screen of an office stand what is next, the motion, whose votes are in, and the acts of the chair. */
    private void oneScreen() {
        browser.resize(Window.DESK);
        browser.script("window.scrollTo(0, 0)");
        Object below = browser.script(
                """
                return arguments[0].filter(words => ![...document.querySelectorAll('h2, p, button')].some(part => {
                    const box = part.getBoundingClientRect();
                    return part.textContent.trim().startsWith(words) && box.height > 0
                        && box.top >= 0 && box.bottom <= window.innerHeight;
                }))""", List.of("Next", "Motion on the floor", "Yes", "No votes yet", "Withdraw the motion"));
        assertThat(below).as("what does not stand on the screen").isEqualTo(List.of());
    }

    /** Ends the session; whoever sits in one that is open cannot sit in another. */
    void close() {
        browser.signIn("board2").go(session);
        browser.click("Close session…");
        browser.click("Close session");
        browser.waitFor("The session is closed.");
    }
}
