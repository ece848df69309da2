package org.proviso.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Every page of the list of screens can be read and used by everybody, also by keyboard alone and in a narrow window. */
@Journey
class EveryPageJourneyTest {

    private static List<String> findings(Browser browser, List<String> pages, Function<Browser, List<String>> check) {
        List<String> findings = new ArrayList<>();
        for (String page : pages) {
            browser.go(page);
            // On a busy machine the frame may come before the page in it.
            browser.find("h1");
            check.apply(browser).forEach(finding -> findings.add(page + ": " + finding));
        }
        return findings;
    }

    @Test
    void everybody_can_read_and_use_every_page(Browser browser) {
        assertThat(everywhere(browser, EveryPageJourneyTest::onThisPage)).isEmpty();
    }

    /** In a window of an office, and then in a narrow one. */
    private static List<String> onThisPage(Browser browser) {
        List<String> findings = new ArrayList<>(Axe.findings(browser));
        findings.addAll(Wcag.findings(browser));
        findings.addAll(Wcag.narrow(browser));
        browser.resize(Window.DESK);
        return findings;
    }

    private static List<String> everywhere(Browser browser, Function<Browser, List<String>> check) {
        List<String> findings = new ArrayList<>();
        Map<String, List<String>> pages = new LinkedHashMap<>();
        Screen.ALL.forEach(screen ->
                pages.computeIfAbsent(screen.user(), any -> new ArrayList<>()).add(screen.address()));
        pages.forEach((user, addresses) -> {
            if (!user.isEmpty()) {
                browser.signIn(user);
            }
            findings.addAll(findings(browser, addresses, check));
        });
        findings.addAll(findings(browser, List.of("/no-such-page"), check));
        return findings;
    }
}
