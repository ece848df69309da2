package org.proviso.browser.twists;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.openqa.selenium.By;
import org.openqa.selenium.Cookie;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;
import org.proviso.browser.Browser;
import org.proviso.browser.Picture;
import org.proviso.browser.Window;

/** The people of the office at one browser, one after the other; what is not as expected ends the play. */
public final class Player implements AutoCloseable {

    /** So often a look is taken, ten times a second or less, before something is not there. */
    private static final int PATIENCE = 80;

    /** The field of that label, in the sheet on top where one is open. */
    private static final String FIELD = """
            const sheets = [...document.querySelectorAll('vaadin-dialog-overlay:not([closing])')];
            const places = sheets.length ? [sheets[sheets.length - 1]] : [document];
            for (const place of places) {
              for (const one of place.querySelectorAll('*')) {
                if (one.label && (one.label === arguments[0] || one.label.startsWith(arguments[0]))
                    && one.getClientRects().length) {
                  return one.inputElement || one.focusElement || one;
                }
              }
              for (const label of place.querySelectorAll('label')) {
                if (label.textContent.trim() === arguments[0] && label.getClientRects().length) {
                  return document.getElementById(label.htmlFor) || label.querySelector('input, select, textarea');
                }
              }
            }
            return null;""";

    /** Buttons, links and choices that are seen, in the sheet on top where one is open. */
    private static final String BUTTON = """
            const sheets = [...document.querySelectorAll('vaadin-dialog-overlay:not([closing])')];
            const place = sheets.length ? sheets[sheets.length - 1] : document;
            const clean = words => words.replace(/\\s+/g, ' ').trim();
            const all = [...place.querySelectorAll('button, a, vaadin-button, vaadin-radio-button, vaadin-checkbox,'
                + 'summary, vaadin-details-summary, vaadin-item, [role=option], label')]
                .filter(one => one.getClientRects().length && !one.disabled);
            const named = one => [clean(one.innerText || one.textContent), one.getAttribute('aria-label') || ''];
            return all.find(one => named(one).includes(arguments[0]))
                || all.find(one => named(one).some(words => words.startsWith(arguments[0]))) || null;""";

    private static final String ITEM = """
            return [...document.querySelectorAll('vaadin-item, vaadin-select-item, vaadin-combo-box-item,'
                + 'vaadin-multi-select-combo-box-item')].find(one => one.getClientRects().length
                && one.textContent.trim().startsWith(arguments[0])) || null;""";

    private final Browser browser;
    private final Path folder;
    private final Map<String, Set<Cookie>> desks = new HashMap<>();

    public Player(String server, Path folder) {
        this.browser = Browser.open(server, Window.DESK);
        this.folder = folder;
    }

    public Browser browser() {
        return browser;
    }

    /** Somebody opens that page at the own desk, where they are signed in from before. */
    public Player as(String user, String page) {
        Set<Cookie> signedIn = desks.get(user);
        if (signedIn == null) {
            browser.signIn(user);
            desks.put(user, browser.driver().manage().getCookies());
        } else {
            browser.driver().manage().deleteAllCookies();
            signedIn.forEach(browser.driver().manage()::addCookie);
        }
        return go(page);
    }

    public Player go(String page) {
        browser.go(page);
        return this;
    }

    /** Types into the field of that label; what stood there is replaced. */
    public Player type(String label, String words) {
        typeInto(found(FIELD, label), words);
        return this;
    }

    /** Presses the button or link of those words, or else the first that begins with them. */
    public Player press(String words) {
        if (browser.driver().getCurrentUrl().contains("/review")) {
            browser.look();
        }
        WebElement button = found(BUTTON, words);
        browser.script("arguments[0].scrollIntoView({block: 'center'})", button);
        click(button);
        return this;
    }

    /** Whatever covers its own box, as a choice with a label does, is clicked by the page itself. */
    private void click(WebElement button) {
        try {
            button.click();
        } catch (WebDriverException e) {
            browser.script("(arguments[0].querySelector('input') || arguments[0]).click()", button);
        }
        browser.rest();
    }

    /** Types into the field with this id; what stood there is replaced. */
    public Player fill(String id, String words) {
        browser.fill(id, words);
        return this;
    }

    /** Chooses what begins with these words in the list with this id. */
    public Player option(String id, String words) {
        return select(browser.find("[id=\"" + id + "\"]"), words);
    }

    /** The field with this id has this in it. */
    public Player holds(String id, String words) {
        Object value = browser.script("return document.getElementById(arguments[0]).value", id);
        if (!words.equals(value)) {
            throw new AssertionError("the field " + id + " has \"" + value + "\", not \"" + words + "\"");
        }
        return this;
    }

    /** Ticks every box of the page. */
    public Player tickAll() {
        browser.script("document.querySelectorAll('main input[type=checkbox]').forEach(box => box.click())");
        browser.rest();
        return this;
    }

    /** Whether something can be pressed that begins with these words. */
    public boolean offers(String words) {
        return browser.script(BUTTON, words) != null;
    }

    public Player key(CharSequence... keys) {
        browser.look().press(keys);
        return this;
    }

    /** These words stand on the page. */
    public Player see(String... words) {
        for (String one : words) {
            for (int i = 0; !browser.text().contains(one); i++) {
                if (i == PATIENCE) {
                    throw new AssertionError("\"" + one + "\" does not stand on "
                            + browser.driver().getCurrentUrl());
                }
                pause();
            }
        }
        return this;
    }

    /** These words are not on the page. */
    public Player dontSee(String... words) {
        String all = browser.text();
        for (String one : words) {
            if (all.contains(one)) {
                throw new AssertionError(
                        "\"" + one + "\" stands on " + browser.driver().getCurrentUrl());
            }
        }
        return this;
    }

    /** Nothing on the page can be pressed that begins with these words. */
    public Player cannot(String words) {
        if (offers(words)) {
            throw new AssertionError(
                    "\"" + words + "\" can be pressed on " + browser.driver().getCurrentUrl());
        }
        return this;
    }

    /** Chooses these words in the field of that label, which opens a list. */
    public Player choose(String label, String words) {
        WebElement field = found(FIELD, label);
        field.click();
        browser.rest();
        WebElement item = found(ITEM, words);
        item.click();
        browser.rest();
        return this;
    }

    public Player picture(String name) {
        SmallPicture.write(browser.driver().getScreenshotAs(OutputType.BYTES), folder.resolve(name + ".png"));
        return this;
    }

    public String text() {
        return browser.text();
    }

    private WebElement found(String script, String words) {
        for (int i = 0; i < PATIENCE; i++) {
            if (browser.script(script, words) instanceof WebElement element) {
                return element;
            }
            pause();
        }
        throw new AssertionError("nothing on " + browser.driver().getCurrentUrl() + " is called \"" + words + "\"");
    }

    private static void pause() {
        try {
            Thread.sleep(100);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Types into the box of the sheet whose name begins with these words. */
    public Player box(String name, String number) {
        List<?> boxes = boxes(name);
        if (boxes.isEmpty()) {
            throw new AssertionError("no box of the sheet begins with " + name);
        }
        typeInto((WebElement) boxes.get(0), number);
        return this;
    }

    /** The same for all of them that are empty. */
    public Player emptyBoxes(String name, String number) {
        for (Object box : boxes(name)) {
            if (((WebElement) box).getAttribute("value").isEmpty()) {
                typeInto((WebElement) box, number);
            }
        }
        return this;
    }

    private List<?> boxes(String name) {
        return (List<?>) browser.script(
                "return [...document.querySelectorAll('table input')].filter(one =>"
                        + " (one.getAttribute('aria-label') || '').startsWith(arguments[0]))",
                name);
    }

    private void typeInto(WebElement field, String words) {
        browser.script("arguments[0].scrollIntoView({block: 'center'})", field);
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE);
        field.sendKeys(words);
        browser.rest();
    }

    /** The number under a heading in the row of the sheet that begins with this name. */
    public String cell(String heading, String row) {
        Object cell = browser.script("""
                const clean = words => words.replace(/\u00ad/g, '').replace(/\\s+/g, ' ').trim();
                for (const table of document.querySelectorAll('table')) {
                    const heads = [...table.querySelectorAll('thead th')].map(one => clean(one.textContent));
                    const at = heads.indexOf(arguments[0]);
                    for (const row of table.querySelectorAll('tbody tr')) {
                        if (at > 0 && clean(row.children[0].firstElementChild.textContent) === arguments[1]) {
                            return clean(row.children[at].firstElementChild.textContent);
                        }
                    }
                }
                return null;""", heading, row);
        if (cell == null) {
            throw new AssertionError("no figure " + heading + " of " + row);
        }
        return (String) cell;
    }

    /** Chooses what begins with these words in the list that is called so. */
    public Player optionOf(String called, String words) {
        return select(browser.find("[aria-label=\"" + called + "\"]"), words);
    }

    private Player select(WebElement list, String words) {
        List<WebElement> options = list.findElements(By.tagName("option"));
        for (int i = 0; i < options.size(); i++) {
            if (options.get(i).getText().startsWith(words)) {
                new Select(list).selectByIndex(i);
                browser.rest();
                return this;
            }
        }
        throw new AssertionError("nothing to choose begins with " + words);
    }

    /** Hands the first upload of the page a file. */
    public Player upload(Path file) {
        WebElement input = (WebElement) browser.script(
                "return document.querySelector('vaadin-upload').shadowRoot.querySelector('input[type=file]')");
        input.sendKeys(file.toAbsolutePath().toString());
        browser.rest();
        return this;
    }

    /** Selects all rows of the grid. */
    public Player selectAll() {
        browser.find("vaadin-grid vaadin-checkbox").click();
        browser.rest();
        return this;
    }

    /** The number that stands at the group of the pattern. */
    public int number(String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(text());
        if (!found.find()) {
            throw new AssertionError("nothing on " + browser.driver().getCurrentUrl() + " reads like " + pattern);
        }
        return Integer.parseInt(found.group(1));
    }

    /** Pictures the page on which the play ended. */
    void failed() {
        Picture.take(browser, Path.of("target", "pictures"), "twists-failed");
        System.out.println(text());
    }

    @Override
    public void close() {
        browser.close();
    }
}
