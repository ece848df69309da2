package org.proviso.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.CountDownLatch;
import java.util.function.LongConsumer;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.proviso.election.LoadWatch;

/** While files are loaded every page says so, and how far it is; the line goes by itself and takes nothing with it. */
@Journey
class UnderWayJourneyTest {

    private static final By LINE = By.cssSelector(".under-way");

    @Test
    void pages_say_what_is_under_way_until_it_is_done(Browser browser, RunningOffice office) throws Exception {
        browser.signIn("supervisor");
        LoadWatch watch = office.the(LoadWatch.class);
        CountDownLatch end = new CountDownLatch(1);
        LongConsumer rows = watch.begin("Saving the roll", 3_000);
        Thread load = new Thread(() -> watch.during(() -> waited(end)));
        load.start();
        for (String page : new String[] {"/", "/intake", "/review/case/G-1058"}) {
            browser.go(page);
            browser.waitFor("Loading files. Saving the roll.");
        }
        assertThat(Axe.findings(browser)).isEmpty();
        rows.accept(2_000);
        browser.waitFor("2,000 of 3,000 rows");
        browser.go("/intake/receive");
        browser.waitFor("2,000 of 3,000 rows");
        end.countDown();
        load.join();
        new WebDriverWait(browser.driver(), java.time.Duration.ofSeconds(10))
                .until(driver -> driver.findElement(LINE).getText().isEmpty());
        assertThat(browser.driver().findElement(LINE).getAttribute("class")).contains("idle");
        assertThat(Axe.findings(browser)).as("at rest").isEmpty();
        assertThat(browser.complaints()).isEmpty();
    }

    private static boolean waited(CountDownLatch end) {
        try {
            end.await();
            return true;
        } catch (InterruptedException e) {
            return false;
        }
    }
}
