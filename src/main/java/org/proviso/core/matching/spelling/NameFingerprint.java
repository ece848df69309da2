package org.proviso.core.matching.spelling;

/**
 * What a quick look at a name sees, packed into one number: which letters it has, its first three letters, its sound,
 * its length, whether it is of two words.
 */
public final class NameFingerprint {

    private static final int BEGINNING_AT = 27;
    private static final int SOUND_AT = 42;
    private static final int LETTER_BITS = 5;
    private static final int LETTER = (1 << LETTER_BITS) - 1;
    private static final long LETTERS = (1L << BEGINNING_AT) - 1;
    private static final long BEGINNING = (1L << SOUND_AT) - 1 - LETTERS;
    private static final long SOUND = 0x3fffL << SOUND_AT;
    private static final long DOUBLE = 1L << 56;
    private static final int LENGTH_AT = 57;
    private static final int LONGEST = 63;

    /** Two errors change at most four of a name's letters, one error in a short name two, and the length by at most two. */
    private static final int MOST_CHANGED = 4;

    private static final int MOST_CHANGED_OF_SHORT = 2;
    private static final int SHORT = 4;
    private static final int LENGTHS_APART = 2;

    private NameFingerprint() {}

    public static long of(String name) {
        long look = 0;
        long beginning = 0;
        for (int i = 0; i < name.length(); i++) {
            look |= 1L << Math.min(BEGINNING_AT - 1, name.charAt(i) & LETTER);
        }
        for (int i = 0; i < 3; i++) {
            beginning = beginning << LETTER_BITS | (i < name.length() ? name.charAt(i) & LETTER : 0);
        }
        return look
                | beginning << BEGINNING_AT
                | (long) Soundex.number(name) << SOUND_AT
                | (long) Math.min(LONGEST, name.length()) << LENGTH_AT
                | (name.indexOf(' ') >= 0 ? DOUBLE : 0);
    }

    /** Whether two names cannot be spellings of one: each of one word, other letters, another beginning, another sound. */
    public static boolean isFar(long a, long b) {
        long differs = a ^ b;
        return (differs & BEGINNING) != 0 && (differs & SOUND) != 0 && ((a | b) & DOUBLE) == 0 && isFarInLetters(a, b);
    }

    private static boolean isFarInLetters(long a, long b) {
        int lengthA = (int) (a >>> LENGTH_AT);
        int lengthB = (int) (b >>> LENGTH_AT);
        int most = Math.min(lengthA, lengthB) <= SHORT ? MOST_CHANGED_OF_SHORT : MOST_CHANGED;
        return Math.abs(lengthA - lengthB) > LENGTHS_APART || Long.bitCount((a ^ b) & LETTERS) > most;
    }

    /** Whether the name is one letter. */
    public static boolean isInitial(long look) {
        return look >>> LENGTH_AT == 1;
    }

    public static boolean isDouble(long look) {
        return (look & DOUBLE) != 0;
    }

    public static int sound(long look) {
        return (int) (look >>> SOUND_AT) & 0x3fff;
    }

    /** The name's first letter as a number above zero, or 0 when it has none. */
    public static int initial(long look) {
        return (int) (look >>> (BEGINNING_AT + 2 * LETTER_BITS)) & LETTER;
    }
}
