package org.proviso.sample.keying;

import java.util.ArrayList;
import java.util.List;
import org.proviso.sample.county.Dice;

/** Slips of the pen and of the keying hand on one word. */
final class KeyingSlips {

    private static final String[][] MISREAD = {
        {"u", "n"},
        {"n", "u"},
        {"rn", "m"},
        {"m", "rn"},
        {"cl", "d"},
        {"d", "cl"},
        {"a", "o"},
        {"o", "a"},
        {"e", "c"},
        {"h", "b"},
        {"i", "l"},
        {"v", "r"}
    };

    private KeyingSlips() {}

    /** One letter or pair read as another that looks like it in handwriting; the word as it is where none fits. */
    static String misread(String word, Dice dice) {
        List<String> possible = new ArrayList<>();
        for (String[] pair : MISREAD) {
            int at = word.indexOf(pair[0], 1);
            if (at > 0) {
                possible.add(word.substring(0, at) + pair[1] + word.substring(at + pair[0].length()));
            }
        }
        return possible.isEmpty() ? word : dice.pick(possible);
    }

    /** A key too few, a key twice, or two keys in the wrong order, never in the first place. */
    static String mistyped(String word, Dice dice) {
        if (word.length() < 4) {
            return word;
        }
        int at = dice.between(1, word.length() - 2);
        return switch (dice.below(3)) {
            case 0 -> word.substring(0, at) + word.substring(at + 1);
            case 1 -> word.substring(0, at) + word.charAt(at) + word.substring(at);
            default -> word.substring(0, at) + word.charAt(at + 1) + word.charAt(at) + word.substring(at + 2);
        };
    }

    /** A digit read as another: 1 as 7, 7 as 1, 4 as 9, 3 as 8, 0 as 6; as it is where no such digit stands. */
    static String misreadDigit(String number, Dice dice) {
        List<String> possible = new ArrayList<>();
        String digits = "1749380660839471";
        for (int i = 0; i < number.length(); i++) {
            for (int k = 0; k < digits.length(); k += 2) {
                if (number.charAt(i) == digits.charAt(k)) {
                    possible.add(number.substring(0, i) + digits.charAt(k + 1) + number.substring(i + 1));
                }
            }
        }
        return possible.isEmpty() ? number : dice.pick(possible);
    }
}
