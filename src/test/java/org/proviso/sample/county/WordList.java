package org.proviso.sample.county;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The hand-written lists that lie beside these classes; a line that starts with # is a remark. */
public final class WordList {

    private WordList() {}

    public static List<String> lines(String name) {
        try (InputStream in = WordList.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program is incomplete: no word list " + name);
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines().filter(line -> !line.startsWith("#")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All words of a list, in order; an underscore inside a word stands for a space. */
    static List<String> words(String name) {
        return lines(name).stream()
                .flatMap(line -> List.of(line.split(" ")).stream())
                .map(word -> word.replace('_', ' '))
                .toList();
    }
}
