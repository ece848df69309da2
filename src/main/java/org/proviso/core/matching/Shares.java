package org.proviso.core.matching;

/**
 * How often a grade comes up: between one person's two papers, between two relatives' papers, and between two papers
 * taken by chance. A chance of 0 stands for "depends on how common the name is on the roll". The shares are set from
 * reasoning about how affirmations are written and keyed, not fitted to any file with known answers (model: I. Fellegi
 * and A. Sunter, A Theory for Record Linkage, Journal of the American Statistical Association 64, 1969).
 */
record Shares(double own, double kin, double chance) {

    private static final double LN2 = Math.log(2);

    /** Bits of evidence that the papers are one person's and not a stranger's. */
    double ownBits(double chanceHere) {
        return log2(own / chanceHere);
    }

    /** Bits of evidence that the papers are a relative's and not a stranger's. */
    double kinBits(double chanceHere) {
        return log2(kin / chanceHere);
    }

    static double log2(double value) {
        return Math.log(value) / LN2;
    }
}
