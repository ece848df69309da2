package org.proviso.core.matching.grades;

import org.proviso.core.matching.spelling.NameSuffix;

/** How two generation marks compare; people often leave theirs out. The shares are as in {@link GradeFrequencies}. */
public enum SuffixGrade implements Grade {
    NEITHER(1, 1, 1, ""),
    SAME(0.6, 0.05, 0.03, "Same suffix."),
    ONE_MISSING(0.36, 0.9, 0.95, "Only one record has a suffix."),
    CONFLICT(0.02, 0.6, 0.4, "Different suffix.");

    private final GradeFrequencies shares;
    private final String words;

    SuffixGrade(double own, double kin, double chance, String words) {
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

    public static SuffixGrade of(NameSuffix a, NameSuffix b) {
        if (a == b) {
            return a == NameSuffix.NONE ? NEITHER : SAME;
        }
        boolean plainSenior = a.ordinal() + b.ordinal() == NameSuffix.SENIOR.ordinal();
        if (plainSenior) {
            return NEITHER;
        }
        return a == NameSuffix.NONE || b == NameSuffix.NONE ? ONE_MISSING : CONFLICT;
    }
}
