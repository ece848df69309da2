package org.proviso.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proviso.core.chain.Sha256;

/** The hash by which files are recognised when they come again: SHA-256 over their bytes. */
public final class ContentHash {

    private ContentHash() {}

    /** Of one file; of a file that is not there, the hash of nothing. */
    public static String ofFile(Path file) {
        MessageDigest digest = Sha256.digest();
        if (!Files.exists(file)) {
            return HexFormat.of().formatHex(digest.digest());
        }
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
            in.transferTo(OutputStream.nullOutputStream());
            return HexFormat.of().formatHex(digest.digest());
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
