package org.proviso.browser;

import java.util.ArrayList;
import java.util.List;
import org.openqa.selenium.Keys;

/**
 * What axe cannot see of a page, checked in the browser: WCAG 2.2, 1.4.10 Reflow, 1.4.12 Text Spacing, 2.4.3 Focus Order,
 * 2.4.7 Focus Visible, 2.4.11 Focus Not Obscured, 2.5.8 Target Size, 4.1.3 Status Messages. Each finding is a sentence; none means that nothing was found.
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

    /** 1.4.12: what a reader may set; nothing may be lost by it. What is only heard is cut off on purpose. */
    private static final String SPACING = """
            const clipped = () => [...document.querySelectorAll('body *')].filter(one => {
                if (one.children.length > 0 && ![...one.childNodes].some(node => node.nodeType === 3 && node.data.trim())) {
                    return false;
                }
                const style = getComputedStyle(one);
                if (!/hidden|clip/.test(style.overflowX + style.overflowY) || one.clientWidth <= 1 || !one.textContent.trim()) {
                    return false;
                }
                return (/hidden|clip/.test(style.overflowX) && one.scrollWidth > one.clientWidth + 1)
                    || (/hidden|clip/.test(style.overflowY) && one.scrollHeight > one.clientHeight + 1);
            });
            const sheet = new CSSStyleSheet();
            sheet.replaceSync('* { line-height: 1.5 !important; letter-spacing: 0.12em !important;'
                + ' word-spacing: 0.16em !important; } p { margin-bottom: 2em !important; }');
            document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
            const found = clipped().map(one => 'text spacing cuts off ' + one.tagName.toLowerCase() + '.' + one.className
                + ' "' + one.textContent.trim().slice(0, 40) + '"');
            const wide = document.scrollingElement.scrollWidth - window.innerWidth;
            if (wide > 0) { found.push('with text spacing the page scrolls sideways by ' + wide + ' px'); }
            document.adoptedStyleSheets = document.adoptedStyleSheets.filter(one => one !== sheet);
            return found;""";

    /**
     * 2.5.8: what is pressed is 24 pixels each way, or no other target is in a circle of 24 pixels around its middle. A link
     * in a sentence is as high as its line; a label is pressed like its box, and the whole of a library's box like the mark at
     * its end. What a list has out of sight, and what scrolls under a
     * line that stands still, is not in the way.
     */
    private static final String TARGETS = """
            const seen = root => [...root.querySelectorAll('*')].flatMap(one => [one, ...(one.shadowRoot ? seen(one.shadowRoot) : [])]);
            const pressed = 'a[href], button, input, select, textarea, summary, [role=button], [role=tab], [role=option],'
                + ' vaadin-select-value-button';
            const area = one => {
                const label = one.labels && one.labels[0];
                const host = one.matches('input, textarea') && one.closest('vaadin-text-field, vaadin-text-area, vaadin-combo-box,'
                    + ' vaadin-date-picker, vaadin-time-picker, vaadin-checkbox, vaadin-radio-button, vaadin-multi-select-combo-box');
                const boxes = [one, host, /checkbox|radio/.test(one.type) && label].filter(Boolean)
                    .map(each => each.getBoundingClientRect()).filter(box => box.width > 0);
                return boxes.length === 0 ? null : {one, left: Math.min(...boxes.map(box => box.left)),
                    right: Math.max(...boxes.map(box => box.right)), top: Math.min(...boxes.map(box => box.top)),
                    bottom: Math.max(...boxes.map(box => box.bottom))};
            };
            const uppermost = (x, y) => {
                let found = document.elementFromPoint(x, y);
                while (found?.shadowRoot?.elementFromPoint(x, y) && found.shadowRoot.elementFromPoint(x, y) !== found) {
                    found = found.shadowRoot.elementFromPoint(x, y);
                }
                return found;
            };
            const stuck = one => {
                for (let part = one; part; part = part.parentElement) {
                    if (/sticky|fixed/.test(getComputedStyle(part).position)) { return part; }
                }
                return null;
            };
            const isSeen = box => {
                const found = uppermost((box.left + box.right) / 2, (box.top + box.bottom) / 2);
                return found && (box.one.contains(found) || box.one.parentElement === found || found.getRootNode().host === box.one);
            };
            const inSentence = one => one.tagName === 'A' && getComputedStyle(one).display === 'inline'
                && [...one.parentElement.childNodes].some(node => node.nodeType === 3 && node.data.trim());
            const all = seen(document).filter(one => one.matches(pressed) && one.getClientRects().length > 0
                && !one.disabled && !one.closest('.skip') && getComputedStyle(one).visibility !== 'hidden'
                && getComputedStyle(one).pointerEvents !== 'none').map(area).filter(Boolean);
            const small = all.filter(box => (box.right - box.left < 23.9 || box.bottom - box.top < 23.9) && !inSentence(box.one));
            const found = [];
            for (const box of small) {
                const x = (box.left + box.right) / 2, y = (box.top + box.bottom) / 2;
                const near = all.find(other => other !== box && !other.one.contains(box.one) && !box.one.contains(other.one)
                    && Math.abs(other.top - y) < 200
                    && isSeen(other) && stuck(other.one) === stuck(box.one) && Math.hypot(Math.max(other.left - x, 0, x - other.right), Math.max(other.top - y, 0, y - other.bottom)) < 12);
                if (near) {
                    found.push('too small to press beside another: ' + box.one.tagName.toLowerCase() + ' "'
                        + (box.one.getAttribute('aria-label') || box.one.textContent.trim() || box.one.id).slice(0, 40) + '" '
                        + Math.round(box.right - box.left) + ' by ' + Math.round(box.bottom - box.top) + ', beside "'
                        + (near.one.getAttribute('aria-label') || near.one.textContent.trim() || near.one.id).slice(0, 40) + '"');
                }
            }
            return found;""";

    /** 2.4.7 for the library's boxes: something of the box or in it looks different once it has the focus. */
    private static final String BOXES = """
            const found = [];
            const looks = host => [host, ...(host.shadowRoot ? host.shadowRoot.querySelectorAll('*') : [])]
                .flatMap(one => [null, '::before', '::after'].map(pseudo => {
                    const style = getComputedStyle(one, pseudo);
                    return style.outlineStyle + style.outlineWidth + style.outlineColor + style.boxShadow
                        + style.borderColor + style.opacity;
                })).join();
            const still = new CSSStyleSheet();
            still.replaceSync('* { transition: none !important; }');
            document.adoptedStyleSheets = [...document.adoptedStyleSheets, still];
            for (const one of document.querySelectorAll('[slot=input], [slot=textarea], vaadin-select-value-button, vaadin-button,'
                + ' vaadin-details-summary, vaadin-tab')) {
                if (one.getClientRects().length === 0 || one.disabled) { continue; }
                const host = one.closest('vaadin-checkbox, vaadin-radio-button')
                    || (one.matches('vaadin-button, vaadin-details-summary, vaadin-tab') ? one : one.parentElement);
                document.activeElement?.blur();
                const deep = host.shadowRoot?.querySelector('vaadin-input-container');
                const both = () => looks(host) + (deep ? looks(deep) : '') + looks(one);
                const before = both();
                one.focus();
                if (document.activeElement !== one) { continue; }
                if (both() === before) {
                    found.push('nothing shows the focus on ' + host.tagName.toLowerCase() + ' "'
                        + (host.label || host.textContent.trim()).slice(0, 40) + '"');
                }
            }
            document.activeElement?.blur();
            document.adoptedStyleSheets = document.adoptedStyleSheets.filter(one => one !== still);
            return found;""";

    private Wcag() {}

    /** What a person who uses the keyboard, or hears the page, would stumble over. */
    static List<String> findings(Browser browser) {
        List<String> findings = new ArrayList<>();
        browser.press(Keys.TAB);
        browser.script("document.activeElement.blur(); scrollTo(0, 0)");
        list(browser.script(TARGETS)).forEach(findings::add);
        list(browser.script(FOCUS)).forEach(findings::add);
        list(browser.script(BOXES)).forEach(findings::add);
        list(browser.script(STATUS)).forEach(findings::add);
        list(browser.script(SPACING)).forEach(findings::add);
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
