package org.proviso.core.matching.spelling;

import java.util.HashMap;
import java.util.Map;

/** The words of an address line and their standard abbreviations, from USPS Publication 28 (see the word list). */
final class PostalWords {

    private static final Map<String, Map<String, String>> BY_KIND = load();
    private static final Map<String, String> SUFFIXES = BY_KIND.getOrDefault("suffix", Map.of());
    private static final Map<String, String> WAYS = BY_KIND.getOrDefault("way", Map.of());
    private static final Map<String, String> UNITS = BY_KIND.getOrDefault("unit", Map.of());
    private static final Map<String, String> PLACES = BY_KIND.getOrDefault("place", Map.of());

    /** Spellings inside a street's name that people use for one another (common practice). */
    private static final Map<String, String> PLAIN = Map.ofEntries(
            Map.entry("SAINT", "ST"),
            Map.entry("MOUNT", "MT"),
            Map.entry("FORT", "FT"),
            Map.entry("FIRST", "1ST"),
            Map.entry("SECOND", "2ND"),
            Map.entry("THIRD", "3RD"),
            Map.entry("FOURTH", "4TH"),
            Map.entry("FIFTH", "5TH"),
            Map.entry("SIXTH", "6TH"),
            Map.entry("SEVENTH", "7TH"),
            Map.entry("EIGHTH", "8TH"),
            Map.entry("NINTH", "9TH"),
            Map.entry("TENTH", "10TH"),
            Map.entry("ELEVENTH", "11TH"),
            Map.entry("TWELFTH", "12TH"));

    private PostalWords() {}

    static boolean isSuffix(String word) {
        return SUFFIXES.containsKey(word);
    }

    static String suffix(String word) {
        return SUFFIXES.getOrDefault(word, word);
    }

    static boolean isWay(String word) {
        return WAYS.containsKey(word);
    }

    static String way(String word) {
        return WAYS.getOrDefault(word, word);
    }

    /** Whether the word names a unit whose number follows. */
    static boolean isUnit(String word) {
        return UNITS.containsKey(word);
    }

    static String unit(String word) {
        return UNITS.getOrDefault(word, word);
    }

    /** Whether the word names a unit by itself. */
    static boolean isPlace(String word) {
        return PLACES.containsKey(word);
    }

    static String place(String word) {
        return PLACES.getOrDefault(word, word);
    }

    static String plain(String word) {
        return PLAIN.getOrDefault(word, word);
    }

    private static Map<String, Map<String, String>> load() {
        Map<String, Map<String, String>> byKind = new HashMap<>();
        for (String[] line : WordList.lines("postal-words.txt")) {
            Map<String, String> words = byKind.computeIfAbsent(line[0], absent -> new HashMap<>());
            for (int i = 1; i < line.length; i++) {
                words.put(line[i], line[1]);
            }
        }
        return byKind;
    }
}
