package org.proviso.core.matching;

import java.util.Arrays;

/**
 * A name as an envelope writes it, ready for quick looks at a dictionary of the roll: its number there, sound, letters and
 * beginning. A name that the roll does not have gets a number of its own below zero, for remembering what it was compared
 * with.
 */
final class Written {

    private final Dictionary names;
    private String text = "";
    private int code;
    private int own;
    private int unknown = -1;
    private int sound;
    private int letters;
    private int beginning;
    private boolean isDouble;

    Written(Dictionary names) {
        this.names = names;
    }

    void set(String name) {
        text = name;
        code = names.find(name);
        own = code >= 0 ? code : --unknown;
        sound = Soundex.number(name);
        letters = Spelling.letters(name);
        beginning = Spelling.beginning(name);
        isDouble = name.indexOf(' ') >= 0;
    }

    String text() {
        return text;
    }

    /** The number under which comparisons with this name are remembered. */
    int own() {
        return own;
    }

    boolean is(int other) {
        return code == other;
    }

    /** Whether the two can at most be kin by a table: nothing in the spelling brings them together. */
    boolean isFar(int other) {
        return !isDouble
                && !names.isDouble(other)
                && beginning != names.beginning(other)
                && Spelling.isFar(letters, names.letters(other), sound, names.sound(other));
    }

    /** A set of a dictionary's numbers, so small that it is walked. */
    static final class Codes {

        private int[] codes = new int[16];
        private int size;

        void clear() {
            size = 0;
        }

        void add(Dictionary names, String name) {
            int code = names.find(name);
            if (code > 0) {
                codes = size == codes.length ? Arrays.copyOf(codes, 2 * size) : codes;
                codes[size++] = code;
            }
        }

        boolean has(int code) {
            for (int i = 0; i < size; i++) {
                if (codes[i] == code) {
                    return true;
                }
            }
            return false;
        }
    }
}
