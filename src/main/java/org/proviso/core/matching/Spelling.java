package org.proviso.core.matching;

/** Whether two spellings differ as one name does by a slip of the hand, as one heard does, or as two names do. */
enum Spelling {
    SLIP,
    SOUND,
    OTHER;

    private static final double ALIKE = 0.92;
    private static final double HEARD = 0.75;

    /** Below this no two names are one slip apart: one changed letter of four leaves 0.83 (Jaro). */
    private static final double FAR = 0.6;

    private static final int SHORT = 4;

    /** One slip in a name of three letters makes another name as easily, so that it says no more than a like sound. */
    private static final int SHORTEST = 3;

    private static final int LONG = 7;

    /** Two slips change four of a name's letters at most. */
    private static final int MOST_CHANGED_LETTERS = 4;

    /** Which letters a name has, one bit each. */
    static int letters(String name) {
        int letters = 0;
        for (int i = 0; i < name.length(); i++) {
            letters |= 1 << (name.charAt(i) & 31);
        }
        return letters;
    }

    /** The first three letters, packed; a shorter name is filled. */
    static int beginning(String name) {
        int beginning = 0;
        for (int i = 0; i < 3; i++) {
            beginning = beginning << 8 | (i < name.length() ? name.charAt(i) & 0xff : 0);
        }
        return beginning;
    }

    /** Whether two names of one word cannot be spellings of one: other letters, another sound. */
    static boolean isFar(int letters, int otherLetters, int sound, int otherSound) {
        return sound != otherSound && Integer.bitCount(letters ^ otherLetters) > MOST_CHANGED_LETTERS;
    }

    /** Two folded names that are not equal; the cheap looks come first. */
    static Spelling of(String a, String b) {
        int shorter = Math.min(a.length(), b.length());
        int gap = Math.abs(a.length() - b.length());
        if (shorter >= SHORT && (a.startsWith(b) || b.startsWith(a)) && gap < SHORT) {
            return SLIP;
        }
        double likeness = JaroWinkler.similarity(a, b);
        if (likeness < FAR) {
            return OTHER;
        }
        int slips = gap > 2 ? gap : EditDistance.optimalStringAlignment(a, b);
        boolean slip = slips == 1 && shorter >= SHORT
                || slips == 2 && (shorter >= LONG || shorter > SHORT && likeness >= ALIKE);
        if (slip) {
            return SLIP;
        }
        if (slips == 1 && shorter == SHORTEST) {
            return SOUND;
        }
        boolean heard = likeness >= HEARD || slips <= 1;
        return heard && Soundex.number(a) == Soundex.number(b) ? SOUND : OTHER;
    }
}
