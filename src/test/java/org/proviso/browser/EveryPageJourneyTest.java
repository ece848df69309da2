package org.proviso.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every page that a person can come to can be read and used by everybody: axe finds nothing on it. */
@Journey
class EveryPageJourneyTest {

    private static final List<String> OPEN = List.of("/sign-in", "/status");

    private static final List<String> OF_THE_OFFICE = List.of(
            "/",
            "/intake",
            "/intake/transmittals",
            "/intake/receive",
            "/intake/cure",
            "/review",
            "/review/case/G-1058",
            "/review/second",
            "/review/signatures",
            "/review/links",
            "/find?for=smith",
            "/board",
            "/release",
            "/notices",
            "/canvass",
            "/ledger",
            "/set-up",
            "/set-up/clock",
            "/set-up/rules",
            "/calendar",
            "/set-up/orders",
            "/set-up/rulings",
            "/set-up/what-if",
            "/set-up/rules/change",
            "/no-such-page");

    private static List<String> findings(Browser browser, List<String> pages) {
        List<String> findings = new ArrayList<>();
        for (String page : pages) {
            browser.go(page);
            Axe.findings(browser).forEach(finding -> findings.add(page + ": " + finding));
        }
        return findings;
    }

    @Test
    void axe_finds_nothing_on_the_pages_of_a_stranger_a_supervisor_and_an_administrator(Browser browser) {
        List<String> findings = new ArrayList<>(findings(browser, OPEN));
        browser.signIn("supervisor");
        findings.addAll(findings(browser, OF_THE_OFFICE));
        browser.signIn("admin");
        findings.addAll(findings(browser, List.of("/", "/set-up/users")));
        assertThat(findings).isEmpty();
    }
}
