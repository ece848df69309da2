package org.proviso.core.matching.spelling;

/** Whether two spellings differ like one name misspelled, like one name misheard, or like two names. */
public enum SpellingDifference {
    SLIP,
    SOUND,
    OTHER;

    private static final double ALIKE = 0.92;
    private static final double HEARD = 0.75;

    /** Below this no two names are one error apart: one changed letter of four leaves 0.83 (Jaro). */
    private static final double FAR = 0.6;

    private static final int SHORT = 4;

    /** One error in a three-letter name just as easily makes another name, so it says no more than a similar sound. */
    private static final int SHORTEST = 3;

    private static final int LONG = 7;

    /** Two folded names that are not equal; the cheap looks come first. */
    public static SpellingDifference of(String a, String b) {
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
