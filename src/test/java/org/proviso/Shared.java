package org.proviso;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The folder of open reference data that lies beside a checkout on the project's own machines. It is not part of the
 * project: a test that reads it is skipped, with one clear line, where it is missing.
 */
public final class Shared {

    private static final Path FOLDER = Path.of("..", "shared");

    private Shared() {}

    /** The file of that name under the reference folder; skips the calling test where there is none. */
    public static Path file(String name) {
        Path file = FOLDER.resolve(name);
        assumeTrue(Files.exists(file), "skipped: no reference data at ../shared/" + name);
        return file;
    }
}
