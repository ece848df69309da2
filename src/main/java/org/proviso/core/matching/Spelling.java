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
        boolean slip = (slips == 1 && shorter >= SHORT)
                || (slips == 2 && (shorter >= LONG || (shorter > SHORT && likeness >= ALIKE)));
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
