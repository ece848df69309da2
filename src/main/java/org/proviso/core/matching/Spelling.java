package org.proviso.core.matching;

/** Whether two spellings differ as one name does by a slip of the hand, as one heard does, or as two names do. */
enum Spelling {
    SLIP,
    SOUND,
    OTHER;

    private static final double ALIKE = 0.92;
    private static final double HEARD = 0.75;
    private static final int SHORT = 4;
    private static final int LONG = 7;

    /** Two folded names that are not equal. */
    static Spelling of(String a, String b) {
        int shorter = Math.min(a.length(), b.length());
        boolean sameSound = Soundex.number(a) == Soundex.number(b);
        int gap = Math.abs(a.length() - b.length());
        if (shorter >= SHORT && (a.startsWith(b) || b.startsWith(a)) && gap < SHORT) {
            return SLIP;
        }
        int slips = gap > 2 ? gap : EditDistance.optimalStringAlignment(a, b);
        if (slips == 1 && shorter >= SHORT || slips == 2 && shorter >= LONG) {
            return SLIP;
        }
        double likeness = JaroWinkler.similarity(a, b);
        if (slips == 2 && shorter > SHORT && likeness >= ALIKE) {
            return SLIP;
        }
        return sameSound && (likeness >= HEARD || slips <= 1) ? SOUND : OTHER;
    }
}
