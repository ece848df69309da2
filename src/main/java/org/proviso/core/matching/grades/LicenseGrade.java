package org.proviso.core.matching.grades;

/** How two driver's license numbers compare; a new state or a new card changes it. Shares as in {@link GradeFrequencies}. */
public enum LicenseGrade implements Grade {
    SAME(0.95, 0.0000002, 0.0000002, "Same driver's license number."),
    DIFFERENT(0.05, 1, 1, "Different driver's license number."),
    UNKNOWN(1, 1, 1, "");

    private final GradeFrequencies shares;
    private final String words;

    LicenseGrade(double own, double kin, double chance, String words) {
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

    public static LicenseGrade of(int a, int b) {
        if (a == 0 || b == 0) {
            return UNKNOWN;
        }
        return a == b ? SAME : DIFFERENT;
    }
}
