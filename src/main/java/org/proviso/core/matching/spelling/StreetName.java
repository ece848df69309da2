package org.proviso.core.matching.spelling;

import java.util.ArrayList;
import java.util.List;

/** A street's name in one spelling, taken apart: {@code N} {@code QUARRY} {@code ST} and a directional after it. */
public record StreetName(String before, String body, String suffix, String after) {

    /** Takes a standard spelling apart. */
    public static StreetName of(String standard) {
        return parse(NameText.words(standard));
    }

    /** Takes folded words apart and brings each to its standard abbreviation (Publication 28, sections 23 and 24). */
    static StreetName parse(List<String> words) {
        int start = 0;
        int end = words.size();
        String after = "";
        if (end >= 2 && PostalWords.isWay(words.get(end - 1)) && !isLetteredAvenue(words)) {
            after = PostalWords.way(words.get(--end));
        }
        String suffix = "";
        if (end >= 2 && PostalWords.isSuffix(words.get(end - 1))) {
            suffix = PostalWords.suffix(words.get(--end));
        }
        String before = "";
        if (end >= 2 && PostalWords.isWay(words.get(0))) {
            before = PostalWords.way(words.get(start++));
        }
        return new StreetName(before, body(words.subList(start, end), suffix), suffix, after);
    }

    private static String body(List<String> words, String suffix) {
        if (words.size() == 1) {
            return PostalWords.plain(words.get(0));
        }
        List<String> kept = new ArrayList<>(words.size());
        for (int i = 0; i < words.size(); i++) {
            String word = words.get(i);
            boolean leads = i == 0 && words.size() > 1 && suffix.isEmpty();
            boolean numbered = i + 1 < words.size() && isNumber(words.get(i + 1));
            kept.add(
                    (leads || numbered) && PostalWords.isSuffix(word)
                            ? PostalWords.suffix(word)
                            : PostalWords.plain(word));
        }
        return String.join(" ", kept);
    }

    private static boolean isNumber(String word) {
        return Digits.only(word);
    }

    /** Avenue N and Avenue S are names, as Avenue B is. */
    private static boolean isLetteredAvenue(List<String> words) {
        return words.size() == 2 && PostalWords.isSuffix(words.get(0));
    }

    String text() {
        StringBuilder text = new StringBuilder();
        for (String part : List.of(before, body, suffix, after)) {
            text.append(part.isEmpty() || text.isEmpty() ? "" : " ").append(part);
        }
        return text.toString();
    }
}
