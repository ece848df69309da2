package org.proviso.status.ui;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The school grade of a text by the formula of Flesch and Kincaid (Kincaid et al., 1975). Syllables are counted by a
 * rule of thumb: groups of vowels, without a silent e.
 */
record ReadingGrade(int words, int sentences, int syllables) {

    static ReadingGrade of(String text) {
        List<String> words = Arrays.stream(text.split("[\\s\u2014]+"))
                .map(word -> word.replaceAll("[^\\p{L}\\p{N}]", ""))
                .filter(word -> !word.isEmpty())
                .toList();
        int sentences = (int) Arrays.stream(text.split("[.?!:](\\s|$)"))
                .filter(part -> !part.isBlank())
                .count();
        return new ReadingGrade(
                words.size(),
                sentences,
                words.stream().mapToInt(ReadingGrade::syllables).sum());
    }

    double grade() {
        return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
    }

    private static int syllables(String word) {
        String bare = word.toLowerCase(Locale.ROOT)
                .replaceAll("(?<=[^aeiouy])e$", "")
                .replaceAll("(?<=[^aeiouydt])ed$", "d")
                .replaceAll("(?<=[^aeiouysxzhcg])es$", "s");
        int groups = 0;
        boolean before = false;
        for (char letter : bare.toCharArray()) {
            boolean vowel = "aeiouy".indexOf(letter) >= 0;
            groups += vowel && !before ? 1 : 0;
            before = vowel;
        }
        return Math.max(1, groups);
    }
}
