package org.proviso.files.mapping;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.proviso.core.Voter;
import org.proviso.files.roll.RollReader;

/** Invented exports of offices, each of another shape. */
final class OwnFiles {

    static final int YEAR = 2026;

    private OwnFiles() {}

    static Path of(String name) {
        return Path.of("src/test/resources/own-files").resolve(name);
    }

    static Path write(Path folder, String name, String text) {
        return write(folder, name, text, StandardCharsets.UTF_8);
    }

    static Path write(Path folder, String name, String text, Charset encoding) {
        try {
            return Files.write(folder.resolve(name), text.getBytes(encoding));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** The mapping proposed for a roll. */
    static Mapping proposed(Path file) {
        return Proposal.of(ListKind.ROLL, file.getFileName().toString(), FileRecognizer.recognize(file, YEAR));
    }

    static Converted converted(Path file, Mapping mapping, Path folder) {
        return Conversion.write(file, mapping, folder.resolve(mapping.list().file()));
    }

    /** The voters of an office's roll, read by the mapping as it is proposed. */
    static List<Voter> voters(Path file, Mapping mapping, Path folder) {
        List<String> warnings = new ArrayList<>();
        return RollReader.read(converted(file, mapping, folder).file(), warnings::add);
    }
}
