package org.proviso.core.matching.index;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.proviso.core.matching.spelling.NameFingerprint;
import org.proviso.core.matching.spelling.NameText;

/**
 * Gives each distinct text a number and counts how often it came; the empty text is number 0. A frozen one also knows
 * what a quick look at two texts needs: sound, letters, beginning.
 */
public final class TextDictionary {

    private final Map<String, Integer> codes = new HashMap<>();
    private final List<String> texts = new ArrayList<>();
    private int[] counts = new int[64];
    private long[] looks = new long[0];
    private int[] hashes = new int[0];

    TextDictionary() {
        register("");
    }

    /** The number of the text, which has now come once more. */
    int add(String text) {
        int code = register(text);
        counts[code]++;
        return code;
    }

    /** The number of a text that came before, which has now come once more. */
    int again(int code) {
        counts[code]++;
        return code;
    }

    /** The number of the text, which is not counted for it. */
    int register(String text) {
        Integer known = codes.get(text);
        if (known != null) {
            return known;
        }
        int code = texts.size();
        codes.put(text, code);
        texts.add(text);
        if (code == counts.length) {
            counts = Arrays.copyOf(counts, code * 2);
        }
        return code;
    }

    /**
     * One dictionary of several, its numbers in the order of the texts, so that they do not depend on who read which part;
     * {@code numbers} takes for each part the new number of each old one.
     */
    static TextDictionary joined(List<TextDictionary> parts, List<int[]> numbers) {
        String[] all = parts.stream()
                .flatMap(part -> part.texts.stream())
                .distinct()
                .sorted()
                .toArray(String[]::new);
        TextDictionary joined = new TextDictionary();
        for (String text : all) {
            joined.register(text);
        }
        for (TextDictionary part : parts) {
            int[] newNumbers = new int[part.texts.size()];
            for (int code = 0; code < newNumbers.length; code++) {
                newNumbers[code] = joined.known(part.texts.get(code));
                joined.counts[newNumbers[code]] += part.counts[code];
            }
            numbers.add(newNumbers);
        }
        return joined;
    }

    /** Takes the counts of another away, whose texts have all come here too. */
    void less(TextDictionary other) {
        for (int code = 0; code < other.texts.size(); code++) {
            counts[known(other.texts.get(code))] -= other.counts[code];
        }
    }

    private int known(String text) {
        return Objects.requireNonNull(codes.get(text), "every text of the parts has come here");
    }

    /** The number of a text that may not have come, or -1. */
    int find(String text) {
        return codes.getOrDefault(text, -1);
    }

    public String text(int code) {
        return texts.get(code);
    }

    /** How often the text of that code came. */
    public int count(int code) {
        return counts[code];
    }

    int size() {
        return texts.size();
    }

    /** A quick look at a text that came (see {@link NameFingerprint}); the table is made when the last text is in. */
    public long look(int code) {
        return looks[code];
    }

    public int sound(int code) {
        return NameFingerprint.sound(looks[code]);
    }

    /** The text's first letter as a number, or 0. */
    int initial(int code) {
        return NameFingerprint.initial(looks[code]);
    }

    /** Whether the text is of two words or more. */
    public boolean isDouble(int code) {
        return NameFingerprint.isDouble(looks[code]);
    }

    /** A number for the text without its spaces, the same on every run. */
    int hash(int code) {
        return hashes[code];
    }

    void freeze() {
        looks = new long[texts.size()];
        hashes = new int[looks.length];
        for (int code = 0; code < looks.length; code++) {
            String text = texts.get(code);
            looks[code] = NameFingerprint.of(text);
            hashes[code] = NameText.joined(text).hashCode();
        }
    }
}
