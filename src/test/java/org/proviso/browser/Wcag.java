package org.proviso.browser;

import java.util.ArrayList;
import java.util.List;
import org.openqa.selenium.Keys;

/**
 * What axe cannot see of a page, checked in the browser: WCAG 2.2, 1.4.10 Reflow, 2.4.3 Focus Order, 2.4.7 Focus Visible,
 * 2.4.11 Focus Not Obscured, 4.1.3 Status Messages. Each finding is a sentence; none means that nothing was found.
 */
public final class Wcag {

    /** 1.4.10: no scrolling in two directions at this width in CSS pixels. */
    private static final Window NARROW = new Window(320, 640);

    /**
     * Goes to everything of the page's own that a key can reach (the library's own boxes have their own ring) and says what is
     * wrong with the focus on it. The caller pressed a key before, so that the browser shows the focus.
     */
    private static final String FOCUS = """
            const found = [];
            const reach = 'a[href], button, input, select, textarea, summary, [tabindex]';
            for (const one of document.querySelectorAll(reach)) {
                const name = one.tagName.toLowerCase() + ' "' + (one.getAttribute('aria-label') || one.textContent.trim()
                    || one.id).slice(0, 40) + '"';
                if (one.tabIndex > 0) { found.push(name + ' is taken out of the order of the page'); }
                if (one.tabIndex < 0 || one.disabled || one.tagName.includes('-') || one.slot
                    || one.getClientRects().length === 0) { continue; }
                one.focus();
                if (document.activeElement !== one) { continue; }
                const style = getComputedStyle(one);
                const ring = (style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 1) || style.boxShadow !== 'none';
                if (!ring) { found.push('nothing shows the focus on ' + name); }
                const box = one.getBoundingClientRect();
                if (box.bottom <= 0 || box.top >= innerHeight || box.right <= 0 || box.left >= innerWidth) {
                    found.push('the focus is out of sight on ' + name);
                    continue;
                }
                const x = Math.min(Math.max(box.left + box.width / 2, 1), innerWidth - 1);
                const y = Math.min(Math.max(box.top + box.height / 2, 1), innerHeight - 1);
                const over = document.elementFromPoint(x, y);
                if (over && !one.contains(over) && !over.contains(one)
                    && !(over.getRootNode().host && over.getRootNode().host.contains(one))) {
                    found.push(over.tagName.toLowerCase() + '.' + over.className + ' lies over ' + name);
                }
            }
            return found;""";

    private static final String STATUS = """
            return [...document.querySelectorAll('.said')]
                .filter(one => !one.closest('[role=status], [role=alert], [aria-live]'))
                .map(one => 'no screen reader hears "' + one.textContent.trim().slice(0, 40) + '"');""";

    /** What sticks out of a narrow window, which the reader would have to scroll sideways for. */
    private static final String WIDE = """
            const wide = document.scrollingElement.scrollWidth - window.innerWidth;
            return wide > 0 ? 'it scrolls sideways by ' + wide + ' px' : '';""";

    private Wcag() {}

    /** What a person who uses the keyboard, or hears the page, would stumble over. */
    static List<String> findings(Browser browser) {
        List<String> findings = new ArrayList<>();
        browser.press(Keys.TAB);
        list(browser.script(FOCUS)).forEach(findings::add);
        list(browser.script(STATUS)).forEach(findings::add);
        return findings;
    }

    /** What somebody with a narrow window, or who makes everything four times as large, would stumble over. */
    static List<String> narrow(Browser browser) {
        browser.resize(NARROW);
        String words = (String) browser.script(WIDE);
        return words.isEmpty() ? List.of() : List.of(words);
    }

    private static List<String> list(Object found) {
        return ((List<?>) found).stream().map(String::valueOf).toList();
    }
}
