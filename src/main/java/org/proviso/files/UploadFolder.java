package org.proviso.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A folder in which the files that somebody sends are gathered. Its own name means nothing, so nothing is named by it. */
public final class UploadFolder {

    private static final String BEGINS = "proviso-upload";

    private UploadFolder() {}

    /** A new one, empty, among the machine's temporary folders. */
    public static Path create() {
        try {
            return Files.createTempDirectory(BEGINS);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static boolean isOne(Path folder) {
        Path name = folder.getFileName();
        return name != null && name.toString().startsWith(BEGINS);
    }
}
