package org.proviso.core.matching.spelling;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** A word list that lies beside this package: lines of words, of which blank ones and those after # are skipped. */
final class WordList {

    private WordList() {}

    static List<String[]> lines(String name) {
        InputStream stream = Objects.requireNonNull(WordList.class.getResourceAsStream(name), name);
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(line -> line.split(" "))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("The word list " + name + " cannot be read.", e);
        }
    }
}
