package org.proviso.core.matching;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/** Slips of pen, ear and keyboard: neighbor keys, letters read for others, doubled, dropped, heard. Seeded. */
final class PenSlips {

    private static final String[] KEYBOARD = {"qwertyuiop", "asdfghjkl", "zxcvbnm"};
    private static final String[][] HEARD = {
        {"ph", "f"}, {"ck", "k"}, {"ie", "y"}, {"y", "i"}, {"ee", "ea"}, {"c", "k"}, {"s", "z"}, {"th", "t"}, {"e", "a"}
    };
    private static final String[][] MISREAD = {{"rn", "m"}, {"cl", "d"}, {"n", "u"}, {"a", "o"}, {"i", "l"}, {"v", "u"}
    };
    private static final String[][] DIGITS = {{"1", "7"}, {"3", "8"}, {"4", "9"}, {"0", "6"}, {"5", "6"}, {"2", "7"}};

    private final Random random;
    private final Map<String, List<String>> nicknames = new HashMap<>();

    PenSlips(Random random, Map<String, List<String>> nicknames) {
        this.random = random;
        this.nicknames.putAll(nicknames);
    }

    boolean in(int percent) {
        return random.nextInt(100) < percent;
    }

    /** A word with one slip. */
    String slip(String word) {
        if (word.length() < 3) {
            return word;
        }
        return switch (random.nextInt(6)) {
            case 0 -> neighborKey(word);
            case 1 -> replaced(word, HEARD);
            case 2 -> replaced(word, MISREAD);
            case 3 -> dropped(word);
            case 4 -> doubled(word);
            default -> exchanged(word);
        };
    }

    /** Digits with one misread, dropped-and-shifted or exchanged. */
    String slipDigits(String digits) {
        if (random.nextInt(3) == 0) {
            return exchanged(digits);
        }
        String misread = replaced(digits, DIGITS);
        if (!misread.equals(digits)) {
            return misread;
        }
        int at = random.nextInt(digits.length());
        return digits.substring(0, at) + random.nextInt(10) + digits.substring(at + 1);
    }

    String nickname(String given) {
        List<String> known = nicknames.getOrDefault(given.toLowerCase(Locale.ROOT), List.of());
        if (known.isEmpty()) {
            return given;
        }
        String nickname = known.get(random.nextInt(known.size()));
        return Character.toUpperCase(nickname.charAt(0)) + nickname.substring(1);
    }

    private String neighborKey(String word) {
        int at = 1 + random.nextInt(word.length() - 1);
        for (String row : KEYBOARD) {
            int key = row.indexOf(word.charAt(at));
            if (key >= 0) {
                int near = key == 0 ? 1 : key - 1;
                return word.substring(0, at) + row.charAt(near) + word.substring(at + 1);
            }
        }
        return dropped(word);
    }

    private String replaced(String word, String[][] table) {
        int from = random.nextInt(table.length);
        for (int i = 0; i < table.length; i++) {
            String[] pair = table[(from + i) % table.length];
            if (word.contains(pair[0])) {
                return word.replaceFirst(pair[0], pair[1]);
            }
        }
        return word;
    }

    private String dropped(String word) {
        int at = 1 + random.nextInt(word.length() - 1);
        return word.substring(0, at) + word.substring(at + 1);
    }

    private String doubled(String word) {
        int at = 1 + random.nextInt(word.length() - 1);
        return word.substring(0, at) + word.charAt(at) + word.substring(at);
    }

    private String exchanged(String word) {
        int at = random.nextInt(word.length() - 1);
        return word.substring(0, at) + word.charAt(at + 1) + word.charAt(at) + word.substring(at + 2);
    }
}
