package org.proviso.core.matching.grades;

import org.proviso.core.matching.spelling.Nicknames;
import org.proviso.core.matching.spelling.SpellingDifference;

/** How the other given names compare; the shares are as in {@link GradeFrequencies}. */
public enum MiddleGrade implements Grade {
    SAME(0.88, 0.25, 0.02, "Same middle name."),
    INITIAL(0.93, 0.3, 0.08, "Same middle initial."),
    DIFFERENT(0.06, 0.72, 0.92, "Different middle name."),
    UNKNOWN(1, 1, 1, "");

    private final GradeFrequencies shares;
    private final String words;

    MiddleGrade(double own, double kin, double chance, String words) {
        this.shares = new GradeFrequencies(own, kin, chance);
        this.words = words;
    }

    @Override
    public GradeFrequencies shares() {
        return shares;
    }

    @Override
    public String words() {
        return words;
    }

    public static MiddleGrade of(String a, String b) {
        if (a.isEmpty() || b.isEmpty()) {
            return UNKNOWN;
        }
        if (a.length() == 1 || b.length() == 1) {
            return a.charAt(0) == b.charAt(0) ? INITIAL : DIFFERENT;
        }
        boolean same = a.equals(b) || Nicknames.kin(a, b) || SpellingDifference.of(a, b) != SpellingDifference.OTHER;
        return same ? SAME : DIFFERENT;
    }
}
