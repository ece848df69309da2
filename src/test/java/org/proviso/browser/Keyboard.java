package org.proviso.browser;

import java.util.function.Predicate;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;

/**
 * A person without a mouse: everything is reached with the tabulator and done with Enter, the space bar or a page's own keys.
 * Only the address of a page's beginning is typed as in any browser.
 */
final class Keyboard {

    private static final int MANY = 150;
    /** A list is short, or filtered before. */
    private static final int ROWS = 60;

    private static final int ATTEMPTS = 5;

    /** By what the thing with the focus is called, inside the library's boxes too. */
    private static final String NAME = """
            let one = document.activeElement;
            while (one.shadowRoot && one.shadowRoot.activeElement) { one = one.shadowRoot.activeElement; }
            const label = one.getAttribute('aria-label')
                || (one.labels && one.labels[0] && one.labels[0].textContent)
                || (one.getAttribute('aria-labelledby') || '').split(' ').map(id => document.getElementById(id))
                    .filter(Boolean).map(part => part.textContent).join(' ');
            const slot = one.querySelector && one.querySelector('slot');
            if (!label && slot && slot.assignedNodes().length > 0) {
                return slot.assignedNodes().map(part => part.textContent).join(' ').replace(/\\s+/g, ' ').trim();
            }
            const copy = one.cloneNode(true);
            copy.querySelectorAll('[aria-hidden=true]').forEach(part => part.remove());
            return (label || copy.textContent).replace(/\\s+/g, ' ').trim();""";

    private final Browser browser;
    private int keys;
    private int letters;
    private int clicks;

    Keyboard(Browser browser) {
        this.browser = browser;
    }

    /** Keys pressed so far, without the letters of what was typed. */
    int keys() {
        return keys;
    }

    /** Letters and digits typed so far, which the paper or the person gives. */
    int letters() {
        return letters;
    }

    /** Clicks so far; the keyboard alone has none. */
    int clicks() {
        return clicks;
    }

    void countAnew() {
        keys = 0;
        letters = 0;
        clicks = 0;
    }

    /** For acts that are counted with the mouse: clicks what bears these words. */
    Keyboard click(String words) {
        browser.click(words);
        clicks++;
        return this;
    }

    Keyboard clickOn(String selector) {
        browser.find(selector).click();
        browser.rest();
        clicks++;
        return this;
    }

    Keyboard signIn(String user) {
        browser.driver().manage().deleteAllCookies();
        browser.go("/sign-in");
        tabTo("User name").type(user).press(Keys.TAB).type("demo-only-password").press(Keys.ENTER);
        browser.find("header.top nav");
        return this;
    }

    /** From the page's beginning to its own part, as the link for it does. */
    Keyboard main() {
        browser.script("document.querySelector('.skip').focus()");
        press(Keys.ENTER);
        if (!Boolean.TRUE.equals(browser.script("return document.activeElement.id === 'main'"))) {
            throw new AssertionError("the way past the menu does not lead to the page's own part");
        }
        return this;
    }

    /** Goes on with the tabulator until the focus is on what bears this name. */
    Keyboard tabTo(String name) {
        return tabTo(name, name::equals);
    }

    /** The same for a name of which only the beginning is known. */
    Keyboard tabToBegins(String name) {
        return tabTo(name, found -> found.startsWith(name));
    }

    private Keyboard tabTo(String name, Predicate<String> fits) {
        String last = "";
        for (int i = 0; i < MANY; i++) {
            new Actions(browser.driver()).sendKeys(Keys.TAB).perform();
            keys++;
            last = (String) browser.script(NAME);
            if (fits.test(last)) {
                return this;
            }
        }
        throw new AssertionError("the tabulator never came to \"" + name + "\" on "
                + browser.driver().getCurrentUrl() + ", but at last to \"" + last + "\"");
    }

    /** The same, and presses Enter on it. */
    Keyboard enter(String name) {
        return tabTo(name).press(Keys.ENTER);
    }

    /** In a list, with the arrows: comes to the row whose first cell says this, and follows the link in its first or last cell. */
    Keyboard row(String first, boolean lastCell) {
        for (int i = 0; i < ATTEMPTS && !comesTo(first); i++) {
            // The list may have been drawn anew meanwhile, by the filter that was typed.
            browser.look();
        }
        if (!browser.script(NAME).equals(first)) {
            throw new AssertionError("the arrows never came to the row of \"" + first + "\"");
        }
        return (lastCell ? press(Keys.END) : this).press(Keys.ENTER);
    }

    private boolean comesTo(String first) {
        for (int i = 0; i < MANY && !isInRows(); i++) {
            press(Keys.TAB);
        }
        press(Keys.HOME);
        for (int i = 0; i < ROWS && !browser.script(NAME).equals(first); i++) {
            press(Keys.ARROW_DOWN);
        }
        return browser.script(NAME).equals(first);
    }

    /** Of one of the library's lists, not in its headings. */
    private boolean isInRows() {
        return (boolean) browser.script("const list = document.activeElement; return list.localName === 'vaadin-grid'"
                + " && (list.shadowRoot.activeElement?.getAttribute('part') || '').includes('body-cell');");
    }

    Keyboard press(CharSequence... pressed) {
        browser.press(pressed);
        keys += pressed.length;
        return this;
    }

    /** Both held down at once. */
    Keyboard together(Keys first, CharSequence then) {
        new Actions(browser.driver()).keyDown(first).sendKeys(then).keyUp(first).perform();
        browser.rest();
        keys += 2;
        return this;
    }

    Keyboard type(String words) {
        browser.press(words);
        letters += words.length();
        return this;
    }

    /** Types into the box of this name. */
    Keyboard fill(String name, String words) {
        return tabTo(name).type(words);
    }

    /** Waits a moment, as somebody does who reads a case that has just come. */
    Keyboard look() {
        browser.look();
        return this;
    }

    Keyboard sees(String words) {
        browser.waitFor(words);
        return this;
    }

    /** Whether the page says so now. */
    boolean reads(String words) {
        return browser.driver().findElement(By.tagName("body")).getText().contains(words);
    }
}
