package org.proviso.core.matching;

/** Which share of the roll was born in each year. */
final class BirthYears {

    private static final int YEARS = 10_000;
    private static final double RAREST = 0.001;

    private final double[] shares = new double[YEARS];

    BirthYears(RollIndex index) {
        int[] counts = new int[YEARS];
        for (int date : index.columns().birth()) {
            counts[PackedDate.year(date) % YEARS]++;
        }
        for (int year = 0; year < YEARS; year++) {
            shares[year] = Math.max(RAREST, index.share(counts[year]));
        }
    }

    double share(int year) {
        return shares[year % YEARS];
    }
}
