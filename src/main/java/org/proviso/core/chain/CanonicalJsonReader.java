package org.proviso.core.chain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads back what {@link CanonicalJson} wrote: texts, whole numbers (as {@code Long}), booleans, lists and objects, no
 * spaces, the keys of an object in ascending order. Anything else is an {@link IllegalArgumentException} that says at
 * which character.
 */
public final class CanonicalJsonReader {

    private static final String ESCAPED = "\"\\nrtbf";
    private static final String MEANT = "\"\\\n\r\t\b\f";
    private static final int HEX_DIGITS = 4;

    private final String text;
    private int at;

    private CanonicalJsonReader(String text) {
        this.text = text;
    }

    /** The object that the text spells. */
    public static Map<String, Object> object(String text) {
        CanonicalJsonReader reader = new CanonicalJsonReader(text);
        Map<String, Object> object = reader.object();
        if (reader.at < text.length()) {
            throw reader.wrong("there is text after the object");
        }
        return object;
    }

    /** The list that the text spells. */
    public static List<Object> list(String text) {
        CanonicalJsonReader reader = new CanonicalJsonReader(text);
        List<Object> list = reader.array();
        if (reader.at < text.length()) {
            throw reader.wrong("there is text after the list");
        }
        return list;
    }

    private Object value() {
        return switch (peek()) {
            case '"' -> quoted();
            case '{' -> object();
            case '[' -> array();
            case 't', 'f' -> yesOrNo();
            default -> number();
        };
    }

    private Map<String, Object> object() {
        Map<String, Object> fields = new LinkedHashMap<>();
        expect('{');
        String last = null;
        while (peek() != '}') {
            if (last != null) {
                expect(',');
            }
            String key = quoted();
            if (last != null && last.compareTo(key) >= 0) {
                throw wrong("the key \"" + key + "\" is out of order");
            }
            expect(':');
            fields.put(key, value());
            last = key;
        }
        expect('}');
        return fields;
    }

    private List<Object> array() {
        List<Object> items = new ArrayList<>();
        expect('[');
        while (peek() != ']') {
            if (!items.isEmpty()) {
                expect(',');
            }
            items.add(value());
        }
        expect(']');
        return items;
    }

    private String quoted() {
        expect('"');
        StringBuilder word = new StringBuilder();
        while (peek() != '"') {
            char letter = text.charAt(at++);
            word.append(letter == '\\' ? unescaped() : letter);
        }
        expect('"');
        return word.toString();
    }

    private char unescaped() {
        char letter = peek();
        at++;
        int known = ESCAPED.indexOf(letter);
        if (known >= 0) {
            return MEANT.charAt(known);
        }
        if (letter != 'u' || at + HEX_DIGITS > text.length()) {
            throw wrong("unknown escape");
        }
        at += HEX_DIGITS;
        try {
            return (char) Integer.parseInt(text, at - HEX_DIGITS, at, 16);
        } catch (NumberFormatException e) {
            throw wrong("unknown escape");
        }
    }

    private Boolean yesOrNo() {
        boolean yes = text.startsWith("true", at);
        if (!yes && !text.startsWith("false", at)) {
            throw wrong("expected true or false");
        }
        at += Boolean.toString(yes).length();
        return yes;
    }

    private Long number() {
        int from = at;
        while (at < text.length() && (text.charAt(at) == '-' || Character.isDigit(text.charAt(at)))) {
            at++;
        }
        try {
            return Long.valueOf(text.substring(from, at));
        } catch (NumberFormatException e) {
            throw wrong("expected a value");
        }
    }

    private char peek() {
        if (at >= text.length()) {
            throw wrong("the text ends too soon");
        }
        return text.charAt(at);
    }

    private void expect(char letter) {
        if (peek() != letter) {
            throw wrong("expected " + letter);
        }
        at++;
    }

    private IllegalArgumentException wrong(String why) {
        return new IllegalArgumentException("at character " + (at + 1) + ": " + why);
    }
}
