package org.proviso.core.matching;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Gives each distinct text a number and counts how often it came; the empty text is number 0. */
final class Dictionary {

    private final Map<String, Integer> codes = new HashMap<>();
    private final List<String> texts = new ArrayList<>();
    private int[] counts = new int[64];
    private int[] sounds = new int[0];
    private int[] hashes = new int[0];
    private boolean[] doubles = new boolean[0];

    Dictionary() {
        add("");
    }

    /** The number of the text, which has now come once more. */
    int add(String text) {
        Integer known = codes.get(text);
        int code = known == null ? register(text) : known;
        counts[code]++;
        return code;
    }

    /** The number of a text that came before, which has now come once more. */
    int again(int code) {
        counts[code]++;
        return code;
    }

    private int register(String text) {
        int code = texts.size();
        codes.put(text, code);
        texts.add(text);
        if (code == counts.length) {
            counts = Arrays.copyOf(counts, code * 2);
        }
        return code;
    }

    /** The number of a text that may not have come, or -1. */
    int find(String text) {
        return codes.getOrDefault(text, -1);
    }

    String text(int code) {
        return texts.get(code);
    }

    /** How often the text came; 0 for one that did not. */
    int count(String text) {
        int code = find(text);
        return code < 0 ? 0 : counts[code];
    }

    int count(int code) {
        return counts[code];
    }

    int size() {
        return texts.size();
    }

    /** The sound of a text that came; the table is made when the last text is in. */
    int sound(int code) {
        return sounds[code];
    }

    /** A number for the text without its spaces, the same on every run. */
    int hash(int code) {
        return hashes[code];
    }

    /** Whether the text is of two words or more. */
    boolean isDouble(int code) {
        return doubles[code];
    }

    void freeze() {
        sounds = new int[texts.size()];
        hashes = new int[sounds.length];
        doubles = new boolean[sounds.length];
        for (int code = 0; code < sounds.length; code++) {
            String text = texts.get(code);
            sounds[code] = Soundex.number(text);
            hashes[code] = NameText.joined(text).hashCode();
            doubles[code] = text.indexOf(' ') >= 0;
        }
    }
}
