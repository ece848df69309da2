package org.proviso.browser;

import java.io.File;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/** Starts Debian's Chromium without a screen, with a profile of its own and nothing to say to anybody elsewhere. */
final class Chromium {

    static final File PROGRAM = new File("/usr/bin/chromium");
    static final File DRIVER = new File("/usr/bin/chromedriver");

    /** The driver's client warns of a protocol that is not used here. */
    private static final Logger CHATTER = Logger.getLogger("org.openqa.selenium");

    private Chromium() {}

    static ChromeDriver start(Path profile, Window window) {
        CHATTER.setLevel(Level.SEVERE);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(PROGRAM);
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--disable-dev-shm-usage",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--lang=en-US",
                "--force-prefers-reduced-motion",
                "--user-data-dir=" + profile);
        ChromeDriverService driver = new ChromeDriverService.Builder()
                .usingDriverExecutable(DRIVER)
                .usingAnyFreePort()
                .build();
        ChromeDriver chromium = new ChromeDriver(driver, options);
        chromium.manage().timeouts().scriptTimeout(Duration.ofSeconds(60)).pageLoadTimeout(Duration.ofSeconds(60));
        resize(chromium, window);
        return chromium;
    }

    /** The page itself gets this size; a window's would count its frame. */
    static void resize(ChromeDriver chromium, Window window) {
        chromium.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", window.width(), "height", window.height(), "deviceScaleFactor", 1, "mobile", false));
    }
}
