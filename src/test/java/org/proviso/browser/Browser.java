package org.proviso.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.springframework.util.FileSystemUtils;

/** A person's browser on one server. Every act waits until the page has come to rest. */
public final class Browser implements AutoCloseable {

    static final String MISSING = "no browser here (install the packages chromium and chromium-driver)";

    private static final String DEMO_PASSWORD = "demo-only-password";
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final Duration A_LOOK = Duration.ofMillis(1_000);

    /** Flow's clients each know whether they still talk to the server; a plain page has none. */
    private static final String AT_REST = """
            if (document.readyState !== 'complete') return false;
            const flow = window.Vaadin && window.Vaadin.Flow;
            if (!flow || !flow.clients) return true;
            const clients = Object.values(flow.clients).filter(one => typeof one.isActive === 'function');
            return clients.length > 0 && clients.every(one => !one.isActive());""";

    private final String server;
    private final Path profile;
    private final ChromeDriver driver;

    private Browser(String server, Path profile, ChromeDriver driver) {
        this.server = server;
        this.profile = profile;
        this.driver = driver;
    }

    static boolean isInstalled() {
        return Chromium.PROGRAM.canExecute() && Chromium.DRIVER.canExecute();
    }

    /** A browser that nobody used before, on the server with this address ({@code http://localhost:8080}). */
    public static Browser open(String server, Window window) {
        try {
            Path profile = Files.createTempDirectory("proviso-browser-");
            return new Browser(server, profile, Chromium.start(profile, window));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** For what this class has no word for. */
    public ChromeDriver driver() {
        return driver;
    }

    public void resize(Window window) {
        Chromium.resize(driver, window);
        rest();
    }

    /** Opens an address of the server, beginning with a slash. */
    public Browser go(String path) {
        driver.get(server + path);
        rest();
        return this;
    }

    /** Signs in with the account of a demonstration; whoever was signed in is signed out. */
    public Browser signIn(String user) {
        driver.manage().deleteAllCookies();
        go("/sign-in");
        driver.findElement(By.id("user")).sendKeys(user);
        driver.findElement(By.id("password")).sendKeys(DEMO_PASSWORD, Keys.ENTER);
        until(() -> !driver.getCurrentUrl().contains("/sign-in"), "signed in as " + user);
        rest();
        return this;
    }

    /** Signs in, or is a stranger again where the name is empty. */
    public Browser be(String user) {
        if (!user.isEmpty()) {
            return signIn(user);
        }
        driver.manage().deleteAllCookies();
        return this;
    }

    /** Presses keys where the focus is. */
    public void press(CharSequence... keys) {
        new Actions(driver).sendKeys(keys).perform();
        rest();
    }

    /** Looks at the page as long as a person does before pressing anything; an earlier press on a case does nothing. */
    public Browser look() {
        try {
            Thread.sleep(A_LOOK.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
        return this;
    }

    /** Types into the field with this id; what stood there is replaced. */
    public Browser fill(String id, String words) {
        WebElement field = find("#" + id);
        field.clear();
        field.sendKeys(words);
        rest();
        return this;
    }

    /** Chooses what is shown as these words in the select with this id. */
    public Browser choose(String id, String words) {
        find("#" + id).sendKeys(words);
        rest();
        return this;
    }

    /** Where the link with exactly these words leads, beginning with a slash. */
    public String href(String words) {
        waitFor(words);
        String whole = driver.findElement(By.linkText(words)).getAttribute("href");
        return whole.substring(server.length());
    }

    /** Clicks the first thing seen that bears exactly these words, a button or link before anything else. */
    public void click(String words) {
        waitFor(words);
        String exact = "[normalize-space(.)=\"" + words + "\" or @aria-label=\"" + words + "\"]";
        String acting = "//*[self::button or self::a or self::vaadin-button or @role='button' or @role='tab']" + exact;
        List<WebElement> found = driver.findElements(By.xpath(acting));
        found.addAll(driver.findElements(By.xpath("//*" + exact)));
        found.stream()
                .filter(WebElement::isDisplayed)
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing to click says: " + words))
                .click();
        rest();
    }

    /** The same for the first button or link that begins with these words. */
    public void clickBegins(String words) {
        waitFor(words);
        By acting = By.xpath("//*[self::button or self::a or self::vaadin-button][starts-with(normalize-space(.), \""
                + words + "\")]");
        find(acting).click();
        rest();
    }

    private WebElement find(By shown) {
        return driver.findElements(shown).stream()
                .filter(WebElement::isDisplayed)
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing to click: " + shown));
    }

    /** The first element that fits the CSS selector, waited for. */
    public WebElement find(String selector) {
        until(() -> !driver.findElements(By.cssSelector(selector)).isEmpty(), selector);
        return driver.findElement(By.cssSelector(selector));
    }

    /** Everything that can be read on the page now. */
    public String text() {
        return driver.findElement(By.tagName("body")).getText();
    }

    /** Waits until these words can be read on the page. */
    public void waitFor(String words) {
        until(() -> text().contains(words), "the words: " + words);
    }

    /** Whether the page fits its window: nothing of it has to be scrolled to. */
    public boolean fitsItsWindow() {
        return (boolean) script("const page = document.scrollingElement;"
                + "return page.scrollHeight <= window.innerHeight && page.scrollWidth <= window.innerWidth");
    }

    /** What an act of the person took since the page was asked for, as the page's own clock has it. */
    public Duration sinceNavigation() {
        return Duration.ofMillis(((Number) script("return Math.round(performance.now())")).longValue());
    }

    /** Runs JavaScript in the page; what it returns as numbers, strings, lists, maps and elements. */
    public Object script(String script, Object... arguments) {
        return driver.executeScript(script, arguments);
    }

    /** Errors that the page wrote to its console. */
    public List<String> complaints() {
        return driver.manage().logs().get("browser").getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
    }

    /** Waits until the page is loaded and the server has answered everything. */
    public void rest() {
        until(() -> (boolean) script(AT_REST), "a page at rest");
    }

    private void until(BooleanSupplier holds, String what) {
        new WebDriverWait(driver, PATIENCE, Duration.ofMillis(50))
                .withMessage(() -> "waited in vain for " + what + " on " + driver.getCurrentUrl())
                .ignoring(WebDriverException.class)
                .until(any -> holds.getAsBoolean());
    }

    @Override
    public void close() {
        driver.quit();
        FileSystemUtils.deleteRecursively(profile.toFile());
    }
}
