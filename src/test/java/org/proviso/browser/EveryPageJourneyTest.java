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

    /** 2.4.2: by the title of its window, each page is told from every other. */
    private final Map<String, String> pageOfTitle = new LinkedHashMap<>();

    @Test
    void everybody_can_read_and_use_every_page(Browser browser) {
        assertThat(everywhere(browser, this::onThisPage)).isEmpty();
    }

    /** In a window of an office, and then in a narrow one. */
    private List<String> onThisPage(Browser browser) {
        List<String> findings = new ArrayList<>(Axe.findings(browser));
        // Before anything is focused, which opens lists.
        findings.addAll(Spoken.of(browser).findings());
        findings.addAll(Wcag.findings(browser));
        findings.addAll(Wcag.narrow(browser));
        browser.resize(Window.DESK);
        findings.addAll(title(browser.driver().getTitle(), browser.driver().getCurrentUrl()));
        return findings;
    }

    private List<String> title(String title, String page) {
        List<String> findings = new ArrayList<>();
        if (title.startsWith("Proviso")) {
            findings.add("its title does not say the page first: " + title);
        }
        String other = pageOfTitle.putIfAbsent(title, page);
        if (other != null && !other.equals(page)) {
            findings.add("its title is that of " + other + ": " + title);
        }
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

    @Test
    void a_page_with_faults_is_found_out(Browser browser) {
        browser.go("/status");
        browser.script("""
                document.querySelector('main').innerHTML = `
                    <h1>A page</h1><h3>A heading too low</h3>
                    <table role="table"><tr><td>a table</td></tr></table><button></button>
                    <p class="tight">It fits as it is</p>
                    <p><button class="dot">a</button><button class="dot">b</button></p>
                    <vaadin-text-field><label>Dull</label><input slot="input" class="dull"></vaadin-text-field>
                    <div class="said">unheard</div>`;
                const put = (selector, style) => document.querySelectorAll(selector)
                    .forEach(one => Object.assign(one.style, style));
                put('.dot, .dull', {all: 'unset'});
                put('.dot', {width: '9px', height: '9px', display: 'inline-block'});
                put('.tight', {width: 'max-content', whiteSpace: 'nowrap', overflow: 'hidden'});
                put('.tight', {width: document.querySelector('.tight').getBoundingClientRect().width + 'px'});""");
        assertThat(Spoken.of(browser).findings())
                .anySatisfy(finding -> assertThat(finding).contains("comes after level 1"))
                .anySatisfy(finding -> assertThat(finding).startsWith("nameless: button"))
                .anySatisfy(finding -> assertThat(finding).startsWith("nameless: table"))
                .anySatisfy(finding -> assertThat(finding).contains("is a header"));
        assertThat(Wcag.findings(browser))
                .anySatisfy(finding -> assertThat(finding).startsWith("text spacing cuts off p.tight"))
                .anySatisfy(
                        finding -> assertThat(finding).startsWith("too small to press beside another: button \"a\""))
                .anySatisfy(finding -> assertThat(finding).startsWith("nothing shows the focus on vaadin-text-field"))
                .anySatisfy(finding -> assertThat(finding).startsWith("nothing shows the focus on button \"a\""))
                .anySatisfy(finding -> assertThat(finding).startsWith("no screen reader hears"));
    }
}
