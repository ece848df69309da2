package org.proviso.core.chain;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Key;

/**
 * JSON with one spelling for one value, so that everybody hashes the same bytes: keys in the order of their code
 * units, no spaces, only what must be escaped is escaped, and no values but texts, whole numbers, booleans, lists and
 * objects. Follows the shape of RFC 8785 for these kinds of values.
 */
public final class CanonicalJson {

    private CanonicalJson() {}

    /** The one spelling of a value; a value of any other kind is a fault of the program. */
    public static String of(Object value) {
        StringBuilder text = new StringBuilder();
        write(value, text);
        return text.toString();
    }

    private static void write(@Nullable Object value, StringBuilder text) {
        if (value instanceof String word) {
            quote(word, text);
        } else if (value instanceof Key key) {
            quote(key.value(), text);
        } else if (value instanceof Integer || value instanceof Long || value instanceof Boolean) {
            text.append(value);
        } else if (value instanceof List<?> list) {
            writeList(list, text);
        } else if (value instanceof Map<?, ?> map) {
            writeMap(map, text);
        } else {
            throw new IllegalArgumentException("the ledger cannot hold a value such as " + value);
        }
    }

    private static void writeList(List<?> list, StringBuilder text) {
        text.append('[');
        String between = "";
        for (Object item : list) {
            text.append(between);
            write(item, text);
            between = ",";
        }
        text.append(']');
    }

    private static void writeMap(Map<?, ?> map, StringBuilder text) {
        Map<String, Object> sorted = new TreeMap<>();
        map.forEach((key, value) -> sorted.put((String) key, value));
        text.append('{');
        String between = "";
        for (Map.Entry<String, Object> entry : sorted.entrySet()) {
            text.append(between);
            quote(entry.getKey(), text);
            text.append(':');
            write(entry.getValue(), text);
            between = ",";
        }
        text.append('}');
    }

    private static void quote(String word, StringBuilder text) {
        text.append('"');
        for (int i = 0; i < word.length(); i++) {
            escape(word.charAt(i), text);
        }
        text.append('"');
    }

    private static void escape(char letter, StringBuilder text) {
        switch (letter) {
            case '"' -> text.append("\\\"");
            case '\\' -> text.append("\\\\");
            case '\n' -> text.append("\\n");
            case '\r' -> text.append("\\r");
            case '\t' -> text.append("\\t");
            case '\b' -> text.append("\\b");
            case '\f' -> text.append("\\f");
            default -> {
                if (letter < 0x20) {
                    text.append(String.format("\\u%04x", (int) letter));
                } else {
                    text.append(letter);
                }
            }
        }
    }
}
