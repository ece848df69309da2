package org.proviso.core.matching.index;

import org.proviso.core.matching.grades.GradeFrequencies;
import org.proviso.core.matching.spelling.PackedDate;

/**
 * How common the roll's names, birth years and households are, as logarithms of shares: a rare name says more than a
 * common one. Read only once made.
 */
public final class RollFrequencies {

    static final double RAREST_NAME = 0.00001;

    private static final int YEARS = 0x9999 + 1;
    private static final double RAREST_YEAR = 0.001;
    private static final double DAYS_OF_YEAR = 365.25;
    private static final double FEWEST_NEIGHBORS = 0.0001;
    private static final int HOUSEHOLDS = 4096;

    private final double[] surnames;
    private final double[] givens;
    private final double[] days;
    private final double[] households;

    public RollFrequencies(RollIndex index) {
        this(index, new double[YEARS], new double[HOUSEHOLDS]);
        int[] counts = new int[YEARS];
        for (int voter = 0; voter < index.size(); voter++) {
            counts[PackedDate.year(index.columns().birth(voter))]++;
        }
        for (int year = 0; year < YEARS; year++) {
            days[year] = GradeFrequencies.log2(Math.max(RAREST_YEAR, index.share(counts[year])) / DAYS_OF_YEAR);
        }
        for (int count = 0; count < HOUSEHOLDS; count++) {
            households[count] = GradeFrequencies.log2(Math.max(FEWEST_NEIGHBORS, index.share(count)));
        }
    }

    private RollFrequencies(RollIndex index, double[] days, double[] households) {
        surnames = names(index, index.words().surnames());
        givens = names(index, index.words().givens());
        this.days = days;
        this.households = households;
    }

    /** Of a few voters of that roll, whose names the roll's dictionaries count. */
    RollFrequencies within(RollIndex added) {
        return new RollFrequencies(added, days, households);
    }

    private static double[] names(RollIndex index, TextDictionary names) {
        double[] logs = new double[names.size()];
        for (int code = 0; code < logs.length; code++) {
            logs[code] = GradeFrequencies.log2(Math.max(RAREST_NAME, index.share(names.count(code))));
        }
        return logs;
    }

    public double surname(int code) {
        return surnames[code];
    }

    public double given(int code) {
        return givens[code];
    }

    /** Of one day in that year (spread digits). */
    public double day(int year) {
        return days[year];
    }

    /** Of a household of that size. */
    public double household(int count) {
        return households[Math.min(HOUSEHOLDS - 1, count)];
    }
}
