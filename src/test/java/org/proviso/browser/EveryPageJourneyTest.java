package org.proviso.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Every page of the list of screens can be read and used by everybody: axe finds nothing on it. */
@Journey
class EveryPageJourneyTest {

    private static List<String> findings(Browser browser, List<String> pages) {
        List<String> findings = new ArrayList<>();
        for (String page : pages) {
            browser.go(page);
            // On a busy machine the frame may come before the page in it.
            browser.find("h1");
            Axe.findings(browser).forEach(finding -> findings.add(page + ": " + finding));
        }
        return findings;
    }

    @Test
    void axe_finds_nothing_on_any_page(Browser browser) {
        List<String> findings = new ArrayList<>();
        Map<String, List<String>> pages = new LinkedHashMap<>();
        Screen.ALL.forEach(screen ->
                pages.computeIfAbsent(screen.user(), any -> new ArrayList<>()).add(screen.address()));
        pages.forEach((user, addresses) -> {
            if (!user.isEmpty()) {
                browser.signIn(user);
            }
            findings.addAll(findings(browser, addresses));
        });
        findings.addAll(findings(browser, List.of("/no-such-page")));
        assertThat(findings).isEmpty();
    }
}
