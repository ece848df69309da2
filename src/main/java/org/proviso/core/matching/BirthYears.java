package org.proviso.core.matching;

/** Which share of the roll was born in each year. */
final class BirthYears {

    private static final int YEARS = 0x9999 + 1;
    private static final double RAREST = 0.001;

    private final double[] shares = new double[YEARS];

    BirthYears(RollIndex index) {
        int[] counts = new int[YEARS];
        for (int voter = 0; voter < index.size(); voter++) {
            counts[PackedDate.year(index.columns().birth(voter))]++;
        }
        for (int year = 0; year < YEARS; year++) {
            shares[year] = Math.max(RAREST, index.share(counts[year]));
        }
    }

    /** The share for a year's spread digits. */
    double share(int year) {
        return shares[year];
    }
}
