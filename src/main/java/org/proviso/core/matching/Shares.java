package org.proviso.core.matching;

/**
 * How often a grade comes up: between one person's two papers, between two relatives' papers, and between two papers
 * taken by chance. A chance of 0 stands for "depends on how common the name is on the roll". The shares are set from
 * reasoning about how affirmations are written and keyed, not fitted to any file with known answers (model: I. Fellegi
 * and A. Sunter, A Theory for Record Linkage, Journal of the American Statistical Association 64, 1969).
 */
final class Shares {

    private static final double LN2 = Math.log(2);

    private final double ownLog;
    private final double kinLog;
    private final double chanceLog;
    private final boolean byName;

    Shares(double own, double kin, double chance) {
        ownLog = log2(own);
        kinLog = log2(kin);
        byName = chance == 0;
        chanceLog = byName ? 0 : log2(chance);
    }

    /** Bits of evidence that the papers are one person's and not a stranger's; the chance counts where it depends on the name. */
    double ownBits(double chanceByName) {
        return ownLog - (byName ? log2(chanceByName) : chanceLog);
    }

    /** Bits of evidence that the papers are a relative's and not a stranger's. */
    double kinBits(double chanceByName) {
        return kinLog - (byName ? log2(chanceByName) : chanceLog);
    }

    static double log2(double value) {
        return Math.log(value) / LN2;
    }
}
