package org.proviso.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** A reviewer without a mouse: from signing in to a proposal, and a clear case in three keys. */
@Journey
class KeyboardJourneyTest {

    private static final int MANY = 40;

    /** Goes on with the tabulator until the focus is on what bears these words. */
    private static void tabTo(Browser browser, String words) {
        for (int i = 0; i < MANY; i++) {
            browser.press(Keys.TAB);
            WebElement focus = browser.driver().switchTo().activeElement();
            if (focus.getText().strip().equals(words)) {
                assertThat(outline(browser))
                        .as("the focus on " + words + " is seen")
                        .isTrue();
                return;
            }
        }
        throw new AssertionError("the tabulator never came to " + words);
    }

    private static boolean outline(Browser browser) {
        return (boolean) browser.script("const style = getComputedStyle(document.activeElement);"
                + "return style.outlineStyle !== 'none' || style.boxShadow !== 'none';");
    }

    @Test
    void a_clear_case_is_found_read_and_proposed_with_three_keys_and_no_mouse(Browser browser) {
        browser.go("/sign-in");
        browser.driver().findElement(By.id("user")).sendKeys("reviewer", Keys.TAB, "demo-only-password", Keys.ENTER);
        browser.waitFor("Waiting for you");
        tabTo(browser, "Skip to main content");
        tabTo(browser, "Review");
        browser.press(Keys.ENTER);
        browser.waitFor("Voting location");
        assertThat(browser.script("return document.querySelector('[role=status].heard').textContent"))
                .as("who hears the page is told which one came")
                .isEqualTo("Review · Proviso");

        browser.press("?");
        browser.waitFor("Keyboard shortcuts on this page");
        assertThat(browser.text()).contains("Take next case");
        browser.press(Keys.ESCAPE);
        assertThat(browser.text()).doesNotContain("Keyboard shortcuts on this page");

        browser.press("/");
        browser.press("G-1044", Keys.ENTER);
        tabTo(browser, "G-1044");
        browser.press(Keys.ENTER);
        browser.waitFor("Envelope G-1044");
        browser.look().press("t");
        browser.waitFor("Compare signature");
        browser.look().press("a");
        browser.waitFor("signature comparison recorded");
        browser.look().press("p");
        browser.waitFor("G-1044 proposed: count");
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void keys_do_nothing_while_somebody_types_and_can_be_switched_off(Browser browser) {
        browser.signIn("reviewer").go("/review");
        browser.press("/");
        browser.press("nap");
        assertThat(browser.driver().getCurrentUrl()).endsWith("/review");
        assertThat(browser.driver().switchTo().activeElement().getAttribute("value"))
                .isEqualTo("nap");
        browser.press(Keys.ESCAPE);
        browser.go("/review");
        browser.press("?");
        browser.waitFor("Keyboard shortcuts on this page");
        browser.find("dialog.keys input[type=checkbox]").click();
        browser.press(Keys.ESCAPE);
        browser.press("n");
        assertThat(browser.driver().getCurrentUrl()).endsWith("/review");
    }

    @Test
    void a_clerk_keys_an_envelope_with_enter_alone(Browser browser) {
        browser.signIn("intake").go("/intake/receive");
        browser.find("#place").sendKeys("Prospect School Gym");
        browser.find("#envelope").sendKeys("G-2100");
        browser.find("#receipt").sendKeys("5538-0417-7", Keys.ENTER);
        browser.rest();
        browser.waitFor("G-2100");
        browser.go("/intake/key/G-2100");
        for (String words : new String[] {"Quill", "Dana", "", "", "", "-"}) {
            browser.press(words, Keys.ENTER);
        }
        assertThat(browser.driver().switchTo().activeElement().getAttribute("id"))
                .isEqualTo("residence_address_line");
        browser.look().go("/intake/key/G-2100");
        assertThat(browser.find("#last_name").getAttribute("value"))
                .as("the draft was kept")
                .isEqualTo("Quill");
        assertThat(browser.find("#first_name").getAttribute("value")).isEqualTo("Dana");
    }
}
