package org.proviso.files.mapping;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.mozilla.universalchardet.UniversalDetector;
import org.proviso.files.InputException;
import org.proviso.files.csv.Utf8Reader;

/** Finds the encoding of a file with a library, which reads all of it: the only accent may stand in the last row. */
final class EncodingFinder {

    private static final int LOOKED_AT = 1 << 13;
    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final Set<String> WIDE = Set.of("UTF-16LE", "UTF-16BE");

    private EncodingFinder() {}

    /** The encoding to read with, and whether the library was sure of one that American offices use. */
    record Found(Charset encoding, boolean sure) {}

    static Found find(Path file) {
        refuseBinary(file);
        String named = named(file);
        if (named != null && WIDE.contains(named)) {
            return new Found(StandardCharsets.UTF_16, true);
        }
        if (isUtf8(file)) {
            return new Found(StandardCharsets.UTF_8, true);
        }
        return new Found(WINDOWS, WINDOWS.name().equalsIgnoreCase(named));
    }

    /** Refuses what is no text: a spreadsheet, a zip, a picture, a database. */
    static void refuseBinary(Path file) {
        String name = file.getFileName().toString();
        if (!Files.isRegularFile(file)) {
            throw new InputException(
                    name, 0, "", "is missing from " + file.toAbsolutePath().getParent());
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] start = in.readNBytes(LOOKED_AT);
            if (start.length > 3 && start[0] == 'P' && start[1] == 'K' && start[2] < ' ' && start[3] < ' ') {
                throw new InputException(name, 0, "", "is a spreadsheet or a zip file; export the list as text (CSV)");
            }
            boolean isWide = start.length > 1 && (start[0] & 0xFF) + (start[1] & 0xFF) == 0xFF + 0xFE;
            for (int i = 0; i < start.length && !isWide; i++) {
                if (start[i] == 0) {
                    throw new InputException(name, 0, "", "is not a text file; export the list as text (CSV)");
                }
            }
        } catch (IOException e) {
            throw new InputException(name, 0, "", "cannot be read: " + e);
        }
    }

    private static @Nullable String named(Path file) {
        try {
            return UniversalDetector.detectCharset(file);
        } catch (IOException e) {
            throw new InputException(file.getFileName().toString(), 0, "", "cannot be read: " + e);
        }
    }

    private static boolean isUtf8(Path file) {
        try (Utf8Reader reader = new Utf8Reader(file)) {
            char[] buffer = new char[1 << 14];
            int read = 0;
            while (read >= 0) {
                read = reader.read(buffer, 0, buffer.length);
            }
            return true;
        } catch (InputException notUtf8) {
            return false;
        } catch (IOException e) {
            throw new InputException(file.getFileName().toString(), 0, "", "cannot be read: " + e);
        }
    }
}
