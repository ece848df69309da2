package org.proviso.core.matching.grades;

import org.proviso.core.matching.spelling.Digits;
import org.proviso.core.matching.spelling.PackedDate;

/** How two birth dates compare; the shares are as in {@link GradeFrequencies}. */
public enum DateGrade implements Grade {
    SAME(0.945, 0.03, 0, "Same date of birth."),
    SWAPPED(0.008, 0.0001, 0.00005, "Date of birth has day and month swapped."),
    SLIP(0.028, 0.002, 0.0018, "Date of birth differs by one digit."),
    YEAR_OFF(0.004, 0.0001, 0.0001, "Year of birth differs by one."),
    ONE_PART(0.006, 0.0045, 0.0045, "Date of birth differs only in the day, the month or the year."),
    CONFLICT(0.004, 0.965, 0.993, "Different date of birth."),
    UNKNOWN(1, 1, 1, "");

    private final GradeFrequencies shares;
    private final String words;

    DateGrade(double own, double kin, double chance, String words) {
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

    /** Two packed dates. */
    public static DateGrade of(int a, int b) {
        if (a == PackedDate.UNKNOWN || b == PackedDate.UNKNOWN) {
            return UNKNOWN;
        }
        if (a == b) {
            return SAME;
        }
        if (PackedDate.swapped(a) == b) {
            return SWAPPED;
        }
        if (Digits.slip(a, b)) {
            return SLIP;
        }
        if (PackedDate.yearOff(a, b)) {
            return YEAR_OFF;
        }
        return PackedDate.partsApart(a, b) == 1 ? ONE_PART : CONFLICT;
    }
}
