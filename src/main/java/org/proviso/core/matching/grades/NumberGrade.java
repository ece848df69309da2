package org.proviso.core.matching.grades;

import org.proviso.core.matching.spelling.Digits;
import org.proviso.core.matching.spelling.IdentifyingNumbers;

/** How the last four digits of the identification number compare; the shares are as in {@link GradeFrequencies}. */
public enum NumberGrade implements Grade {
    SAME(0.955, 0.0001, 0.0001, "Same last 4 of SSN."),
    SLIP(0.03, 0.0039, 0.0039, "Last 4 of SSN differs by one digit."),
    DIFFERENT(0.012, 0.996, 0.996, "Different last 4 of SSN."),
    UNKNOWN(1, 1, 1, "");

    private final GradeFrequencies shares;
    private final String words;

    NumberGrade(double own, double kin, double chance, String words) {
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

    public static NumberGrade of(int a, int b) {
        if (a == IdentifyingNumbers.NONE || b == IdentifyingNumbers.NONE) {
            return UNKNOWN;
        }
        if (a == b) {
            return SAME;
        }
        return Digits.slip(a, b) ? SLIP : DIFFERENT;
    }
}
