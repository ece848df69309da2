package org.proviso.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.openqa.selenium.OutputType;

/** What is seen in a browser's window, as a PNG. */
public final class Picture {

    private static final Path FOLDER = Path.of("target", "pictures");

    private Picture() {}

    /** Writes {@code target/pictures/name.png}. */
    public static Path take(Browser browser, String name) {
        return take(browser, FOLDER, name);
    }

    /** Writes {@code name.png} into that folder. */
    public static Path take(Browser browser, Path folder, String name) {
        try {
            Files.createDirectories(folder);
            return Files.write(folder.resolve(name + ".png"), browser.driver().getScreenshotAs(OutputType.BYTES));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
