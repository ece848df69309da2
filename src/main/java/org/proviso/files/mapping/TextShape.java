package org.proviso.files.mapping;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.proviso.core.Code;

/**
 * How one column holds what are several of ours: {@code GARCIA, ANA MARIE JR}, {@code ANA M GARCIA}, {@code 12 1/2 N MAIN
 * ST APT 4} or {@code MILLBROOK, TM 49871-0021}. What cannot be told apart for sure does not fit; the state is left out, as
 * no list of ours has it.
 */
public enum TextShape implements Code {
    LAST_FIRST(Set.of("last_name", "first_name", "middle_name", "suffix")),
    FIRST_LAST(Set.of("last_name", "first_name", "middle_name", "suffix")),
    ADDRESS_LINE(Set.of("house_number", "street", "unit")),
    CITY_STATE_ZIP(Set.of("city", "zip"));

    private static final Set<String> SUFFIXES = Set.of("JR", "SR", "II", "III", "IV", "V", "2ND", "3RD", "4TH");
    private static final Pattern LINE = Pattern.compile(
            "(?<number>\\d+[A-Za-z]?(?:-\\d+)?(?: \\d/\\d)?) +(?<street>.+?)(?:[ ,]+(?<unit>(?:(?:APT|UNIT|STE|SUITE|LOT|TRLR|SPC|RM|BLDG|FL|NO)\\.? +#?|# ?)\\S+))?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern PLACE =
            Pattern.compile("(?<city>[^,\\d]+?)(?:, *| +)(?:[A-Za-z]{2}\\.?),? +(?<zip>\\d{5}(?:-?\\d{4})?)");

    private final Set<String> parts;

    TextShape(Set<String> parts) {
        this.parts = parts;
    }

    /** Our columns that can be read from it. */
    public Set<String> parts() {
        return parts;
    }

    /** The first of our columns, which holds the whole text where it does not fit, so that nothing is lost. */
    String wholeIn() {
        return switch (this) {
            case LAST_FIRST, FIRST_LAST -> "last_name";
            case ADDRESS_LINE -> "street";
            case CITY_STATE_ZIP -> "city";
        };
    }

    /** Our columns with their texts; empty where the text is not of this shape. */
    Optional<Map<String, String>> split(String text) {
        return switch (this) {
            case LAST_FIRST -> lastFirst(text);
            case FIRST_LAST -> firstLast(text);
            case ADDRESS_LINE ->
                matched(LINE.matcher(text), "house_number", "number", "street", "street", "unit", "unit");
            case CITY_STATE_ZIP -> matched(PLACE.matcher(text), "city", "city", "zip", "zip");
        };
    }

    private static Optional<Map<String, String>> lastFirst(String text) {
        String[] sides = text.split(" *, *", -1);
        if (sides.length < 2 || sides.length > 3 || sides[0].isBlank() || sides[1].isBlank()) {
            return Optional.empty();
        }
        if (sides.length == 3) {
            return isSuffix(sides[2]) ? Optional.of(given(sides[0], sides[1], sides[2])) : Optional.empty();
        }
        String[] words = sides[1].split(" +", -1);
        String last = words[words.length - 1];
        if (words.length > 1 && isSuffix(last)) {
            return Optional.of(given(sides[0], sides[1].substring(0, sides[1].length() - last.length()), last));
        }
        int space = sides[0].lastIndexOf(' ');
        String behind = sides[0].substring(space + 1);
        return Optional.of(
                space > 0 && isSuffix(behind)
                        ? given(sides[0].substring(0, space), sides[1], behind)
                        : given(sides[0], sides[1], ""));
    }

    private static Map<String, String> given(String last, String names, String suffix) {
        String[] words = names.strip().split(" +", 2);
        return Map.of(
                "last_name",
                last.strip(),
                "first_name",
                words[0],
                "middle_name",
                words.length > 1 ? words[1].strip() : "",
                "suffix",
                suffix);
    }

    /** Two or three words and a suffix can be told apart; of four or more nobody can say which belong together. */
    private static Optional<Map<String, String>> firstLast(String text) {
        String[] words = text.replace(",", " ").strip().split(" +", -1);
        boolean ends = words.length > 2 && isSuffix(words[words.length - 1]);
        int names = words.length - (ends ? 1 : 0);
        if (names < 2 || names > 3) {
            return Optional.empty();
        }
        return Optional.of(Map.of(
                "first_name",
                words[0],
                "middle_name",
                names == 3 ? words[1] : "",
                "last_name",
                words[names - 1],
                "suffix",
                ends ? words[words.length - 1] : ""));
    }

    private static boolean isSuffix(String word) {
        return SUFFIXES.contains(word.replace(".", "").toUpperCase(Locale.ROOT));
    }

    private static Optional<Map<String, String>> matched(Matcher matcher, String... names) {
        if (!matcher.matches()) {
            return Optional.empty();
        }
        Map<String, String> parts = new HashMap<>();
        for (int i = 0; i < names.length; i += 2) {
            String part = matcher.group(names[i + 1]);
            parts.put(names[i], part == null ? "" : part.strip());
        }
        return Optional.of(parts);
    }
}
