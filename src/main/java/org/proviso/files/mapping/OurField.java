package org.proviso.files.mapping;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.proviso.core.Code;

/**
 * One of our columns: what may stand in it, whether a row without it is refused, the names offices have for it, and for
 * a code our words, each with the spellings often met.
 */
public record OurField(String name, Kind kind, boolean needed, List<String> names, Map<String, List<String>> codes) {

    /** What may stand in the column. A key is a number or code that other rows refer to. */
    public enum Kind implements Code {
        TEXT,
        KEY,
        DATE,
        MOMENT,
        WHOLE,
        YES_NO,
        CODE
    }

    static final Map<String, List<String>> YES_NO =
            Map.of("yes", List.of("y", "t", "true", "1", "x"), "no", List.of("n", "f", "false", "0"));

    /** A name without case, spaces and signs, as names are compared. */
    static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
    }

    /** Which of the common names this is, counted from 0; -1 where it is none. */
    int rankOf(String column) {
        String plain = plain(column);
        for (int i = 0; i < names.size(); i++) {
            if (plain(names.get(i)).equals(plain)) {
                return i;
            }
        }
        return -1;
    }

    /** Whether the field takes words of a fixed list, our own words. */
    public boolean isCoded() {
        return kind == Kind.CODE || kind == Kind.YES_NO;
    }

    /** Our words of a coded field. */
    public List<String> words() {
        return kind == Kind.YES_NO ? List.of("yes", "no") : List.copyOf(codes.keySet());
    }

    /** Our word for a value as offices often spell it; empty where it is not a common spelling. */
    Optional<String> commonWord(String value) {
        String plain = plain(value);
        for (var word : (kind == Kind.YES_NO ? YES_NO : codes).entrySet()) {
            if (plain(word.getKey()).equals(plain)
                    || word.getValue().stream()
                            .anyMatch(spelling -> plain(spelling).equals(plain))) {
                return Optional.of(word.getKey());
            }
        }
        return Optional.empty();
    }
}
