package org.proviso.browser;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.openqa.selenium.By;
import org.openqa.selenium.interactions.Actions;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/**
 * How fast the office feels, through Chromium: from the press that signs in to the first paint and to the page's head, and
 * from a key pressed in a field to the next frame. A command, never a test; it starts a demonstration of its own.
 */
@Command(name = "felt", mixinStandardHelpOptions = true, description = "Measures how fast the office feels.")
public final class Felt implements Runnable {

    /** Every new page notes when its first heading can be seen: in the frame after it came. */
    private static final String NOTE_HEAD = """
            new MutationObserver((changes, watch) => {
                if (document.querySelector('main h1')?.textContent) {
                    watch.disconnect();
                    requestAnimationFrame(() => setTimeout(() => { window.headSeen = performance.now(); }));
                }
            }).observe(document, {subtree: true, childList: true, characterData: true});""";

    /** From the moment the browser had the key to the end of the frame that shows what it did. */
    private static final String NOTE_ECHO = """
            window.echoes = [];
            document.addEventListener('keydown', key => requestAnimationFrame(() => {
                const painted = new MessageChannel();
                painted.port1.onmessage = () => window.echoes.push(performance.now() - key.timeStamp);
                painted.port2.postMessage(0);
            }), true);""";

    private static final String PAINTED =
            "return performance.getEntriesByName('first-contentful-paint').map(paint => paint.startTime)";

    private static final String WORDS = "the voter called and said that the lease began in june ";

    @Option(names = "--rounds", defaultValue = "20", description = "Sign-ins. Default: ${DEFAULT-VALUE}.")
    private int rounds;

    @Option(names = "--keys", defaultValue = "200", description = "Keys in each field. Default: ${DEFAULT-VALUE}.")
    private int keys;

    @Option(
            names = "--people",
            defaultValue = "4",
            description =
                    "Who read the queue and cases without a pause while somebody types. Default: ${DEFAULT-VALUE}.")
    private int people;

    public static void main(String[] arguments) {
        System.exit(new CommandLine(new Felt()).execute(arguments));
    }

    @Override
    public void run() {
        try (RunningOffice office = RunningOffice.fresh();
                Browser browser = Browser.open(office.address(), Window.DESK)) {
            browser.driver()
                    .executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", java.util.Map.of("source", NOTE_HEAD));
            signIns(browser);
            typing(browser, "at rest");
            try (BusyOffice busy = BusyOffice.of(office, people)) {
                typing(browser, people + " people reading without a pause");
                say(busy.toString());
            }
        }
    }

    /** The first is a cold program's; the others are what people feel. */
    private void signIns(Browser browser) {
        List<Double> paint = new ArrayList<>();
        List<Double> head = new ArrayList<>();
        for (int round = 0; round <= rounds; round++) {
            browser.signIn("reviewer");
            browser.find("main h1");
            browser.rest();
            List<?> painted = (List<?>) browser.script(PAINTED);
            double first = ((Number) painted.get(0)).doubleValue();
            double seen = ((Number) browser.script("return window.headSeen")).doubleValue();
            if (round == 0) {
                say(String.format(Locale.ROOT, "the very first sign-in: %.0f ms, head %.0f ms", first, seen));
            } else {
                paint.add(first);
                head.add(seen);
            }
        }
        say("sign-in to first paint", paint);
        say("sign-in to the page's head", head);
    }

    private void typing(Browser browser, String how) {
        browser.signIn("intake").go("/intake/receive");
        typed(browser, how + ", receiving", at -> at.findElement(By.id("place")));
        browser.go("/intake/key/G-1011");
        typed(browser, how + ", keying", at -> at.findElement(By.id("last_name")));
        browser.signIn("reviewer").go("/review/case/G-1058");
        browser.click("Write note");
        typed(browser, how + ", note on a case", at -> at.findElement(By.cssSelector("vaadin-text-area textarea")));
    }

    private void typed(
            Browser browser,
            String what,
            Function<org.openqa.selenium.WebDriver, org.openqa.selenium.WebElement> field) {
        browser.script(NOTE_ECHO);
        field.apply(browser.driver()).click();
        for (int key = 0; key < keys; key++) {
            new Actions(browser.driver())
                    .sendKeys(String.valueOf(WORDS.charAt(key % WORDS.length())))
                    .perform();
        }
        browser.rest();
        List<?> echoes = (List<?>) browser.script("return window.echoes");
        say(what, echoes.stream().map(echo -> ((Number) echo).doubleValue()).toList());
    }

    private static void say(String what, List<Double> milliseconds) {
        List<Double> sorted = new ArrayList<>(milliseconds);
        Collections.sort(sorted);
        say(String.format(
                Locale.ROOT,
                "%s: median %.0f ms, p95 %.0f, most %.0f (%d times, load %.1f)",
                what,
                sorted.get(sorted.size() / 2),
                sorted.get((int) Math.ceil(sorted.size() * 0.95) - 1),
                sorted.get(sorted.size() - 1),
                sorted.size(),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage()));
    }

    private static void say(String line) {
        System.out.println(line);
    }
}
