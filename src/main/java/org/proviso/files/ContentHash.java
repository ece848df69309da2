package org.proviso.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proviso.core.chain.Sha256;

/** The hash by which files are recognised when they come again: SHA-256 over their bytes. */
public final class ContentHash {

    private ContentHash() {}

    /** Of one file; of a file that is not there, the hash of nothing. */
    public static String ofFile(Path file) {
        try {
            return Sha256.of(Files.exists(file) ? Files.readAllBytes(file) : new byte[0]);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + file + ": " + e.getMessage(), e);
        }
    }

    /** Of an election folder: the names and bytes of its files; pictures in folders below do not matter. */
    public static String ofFolder(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> sorted = files.filter(Files::isRegularFile).sorted().toList();
            return Sha256.of(sorted.stream()
                    .map(file -> file.getFileName() + " " + ofFile(file))
                    .collect(Collectors.joining("\n")));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + folder + ": " + e.getMessage(), e);
        }
    }
}
