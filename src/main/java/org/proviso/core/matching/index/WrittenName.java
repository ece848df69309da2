package org.proviso.core.matching.index;

import java.util.Arrays;
import org.proviso.core.matching.spelling.NameFingerprint;

/**
 * A name as an envelope writes it, ready for quick looks at a dictionary of the roll.
 *
 * @param own its number there, by which comparisons with it are remembered; a name that the roll does not have has one of
 *     its own below zero
 */
public record WrittenName(String text, int own, long look) {

    public static final WrittenName NOTHING = new WrittenName("", 0, 0);

    /** The number below zero is for a name that the roll does not have. */
    static WrittenName of(TextDictionary names, String text, int belowZero) {
        int code = names.find(text);
        return new WrittenName(text, code >= 0 ? code : belowZero, NameFingerprint.of(text));
    }

    public boolean is(int other) {
        return own == other;
    }

    public boolean isInitial() {
        return text.length() == 1;
    }

    /** A set of a dictionary's numbers, so small that it is walked. */
    public static final class Codes {

        private int[] codes = new int[16];
        private int size;

        public void clear() {
            size = 0;
        }

        public void add(TextDictionary names, String name) {
            int code = names.find(name);
            if (code > 0) {
                codes = size == codes.length ? Arrays.copyOf(codes, 2 * size) : codes;
                codes[size++] = code;
            }
        }

        public boolean has(int code) {
            for (int i = 0; i < size; i++) {
                if (codes[i] == code) {
                    return true;
                }
            }
            return false;
        }
    }
}
