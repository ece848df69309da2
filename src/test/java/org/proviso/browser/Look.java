package org.proviso.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.openqa.selenium.OutputType;
import picocli.CommandLine.Option;

/** How a page is looked at: on a window of another size, by night, in the system's own colors, magnified, or on paper. */
final class Look {

    @Option(names = "--dark", description = "As by night (prefers-color-scheme).")
    private boolean dark;

    @Option(names = "--forced-colors", description = "With the colors of the reader's system only.")
    private boolean forcedColors;

    @Option(names = "--zoom", description = "At 200 %, in the window of an office.")
    private boolean zoom;

    @Option(names = "--print", description = "As it comes out of a printer on letter paper, all sheets in one picture.")
    private boolean print;

    @Option(names = "--whole", description = "The whole page, not only what the window shows.")
    private boolean whole;

    @Option(names = "--width", paramLabel = "PIXELS", description = "Every page at this width; 390 is a telephone.")
    private int width;

    @Option(names = "--every-look", description = "In the window of the list, and then in each of these ways.")
    private boolean every;

    private static final int ZOOM = 2;

    private static final int TABLET = 768;

    /** The window of the office at 200 %: half as many CSS pixels, each twice as large. */
    private static final Window ZOOMED = new Window(Window.DESK.width() / ZOOM, Window.DESK.height() / ZOOM);

    /** This one, or each that there is. */
    List<Look> looks() {
        return every
                ? List.of(
                        look(look -> {}),
                        look(look -> look.width = Window.PHONE.width()),
                        look(look -> look.width = TABLET),
                        look(look -> look.zoom = true),
                        look(look -> look.dark = true),
                        look(look -> look.forcedColors = true),
                        look(look -> look.print = true))
                : List.of(this);
    }

    private Look look(Consumer<Look> set) {
        Look look = new Look();
        look.whole = whole;
        set.accept(look);
        return look;
    }

    Window window(Screen screen) {
        if (zoom) {
            return ZOOMED;
        }
        return width > 0 ? Screen.window(width) : screen.window();
    }

    /** Sets the browser so; holds until it is set otherwise. */
    void apply(Browser browser, Screen screen) {
        browser.resize(window(screen));
        List<Map<String, String>> features = new ArrayList<>();
        features.add(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"));
        features.add(Map.of("name", "forced-colors", "value", forcedColors ? "active" : "none"));
        browser.driver().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("features", features));
    }

    /** Writes the picture and gives its file. */
    Path picture(Browser browser, Path folder, String name) {
        try {
            Files.createDirectories(folder);
            return Files.write(folder.resolve(name + suffix() + ".png"), png(browser));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private byte[] png(Browser browser) {
        if (print) {
            return Paper.picture(browser);
        }
        if (!whole && !zoom) {
            return browser.driver().getScreenshotAs(OutputType.BYTES);
        }
        Map<String, Object> taken = browser.driver().executeCdpCommand("Page.captureScreenshot", captured(browser));
        return Base64.getDecoder().decode((String) taken.get("data"));
    }

    private Map<String, Object> captured(Browser browser) {
        String size = whole ? "document.scrollingElement.scrollHeight" : "window.innerHeight";
        Object height = browser.script("return " + size);
        Object across = browser.script("return window.innerWidth");
        Map<String, Object> clip = Map.of("x", 0, "y", 0, "width", across, "height", height, "scale", zoom ? ZOOM : 1);
        return Map.of("format", "png", "captureBeyondViewport", whole, "clip", clip);
    }

    private String suffix() {
        return (width > 0 ? "-" + width : "")
                + (zoom ? "-zoom" : "")
                + (dark ? "-dark" : "")
                + (forcedColors ? "-forced-colors" : "")
                + (print ? "-print" : "");
    }
}
