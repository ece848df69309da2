package org.proviso.core.matching.grades;

/**
 * How often a grade comes up: between one person's two papers, between two relatives' papers, and between two papers
 * taken by chance. A chance of 0 stands for "depends on how common the name is on the roll". The shares are set from
 * reasoning about how affirmations are written and keyed, not fitted to any file with known answers (model: I. Fellegi
 * and A. Sunter, A Theory for Record Linkage, Journal of the American Statistical Association 64, 1969).
 */
public record GradeFrequencies(double own, double kin, double chance) {

    private static final double LN2 = Math.log(2);

    /** Whether the chance depends on how common the name is. */
    public boolean byName() {
        return chance == 0;
    }

    public static double log2(double value) {
        return Math.log(value) / LN2;
    }
}
