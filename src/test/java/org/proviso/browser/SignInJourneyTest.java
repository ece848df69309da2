package org.proviso.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Somebody comes to the office for the first time, signs in, and is where the day begins. */
@Journey
class SignInJourneyTest {

    @Test
    void a_stranger_is_asked_who_it_is_and_a_reviewer_signs_in_by_keyboard_and_sees_today(Browser browser) {
        browser.go("/");
        assertThat(browser.driver().getCurrentUrl())
                .as("a stranger is asked who it is")
                .endsWith("/sign-in");
        assertThat(Axe.findings(browser)).isEmpty();
        browser.signIn("reviewer");
        browser.waitFor("Today");
        assertThat(browser.complaints()).isEmpty();
        Picture.take(browser, "today");
    }
}
