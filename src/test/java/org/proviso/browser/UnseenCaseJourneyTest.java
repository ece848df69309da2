package org.proviso.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A press that was meant for the case before never acts on the one that has just come on the screen. */
@Journey
class UnseenCaseJourneyTest {

    /** An impatient finger: presses the act of a case in the moment in which that case appears. */
    private static final String TOO_EARLY = """
            new MutationObserver((changes, watch) => {
              const act = document.querySelector('[data-case] [data-key=a]');
              if (act) {
                watch.disconnect();
                act.click();
              }
            }).observe(document.body, {subtree: true, childList: true});""";

    @Test
    void a_press_in_the_moment_a_case_appears_does_nothing_and_a_press_after_a_look_does(Browser browser)
            throws InterruptedException {
        browser.signIn("reviewer");
        browser.go("/review");
        browser.script(TOO_EARLY);
        browser.press("n");
        browser.waitFor("Compare signature");
        browser.waitFor("Nothing was done to it");
        assertThat(browser.text()).contains("Not compared yet.");
        Thread.sleep(1_000);
        browser.press("a");
        browser.waitFor("signature comparison recorded");
        assertThat(browser.complaints()).isEmpty();
    }
}
