package org.proviso.core.matching.grades;

import org.proviso.core.matching.spelling.Digits;
import org.proviso.core.matching.spelling.PackedDate;
import org.proviso.core.matching.spelling.WrittenBirthDate;

/**
 * How what can be read of a date of birth that is no date compares with the roll's; the shares are as in
 * {@link GradeFrequencies}. One who wrote a day that no calendar has may have written the rest wrong too, so that a
 * difference says less than that of two whole dates.
 */
public enum BirthPartGrade implements Grade {
    YEAR_AND_MONTH(0.9, 0.005, 0.0015, "What can be read of the date of birth, year and month, is the same."),
    YEAR(0.93, 0.04, 0.018, "What can be read of the date of birth, the year, is the same."),
    WITHOUT_YEAR(0.9, 0.004, 0.003, "What can be read of the date of birth, month and day, is the same."),
    DIFFERENT(0.07, 0.96, 0.98, "What can be read of the date of birth is different."),
    UNKNOWN(1, 1, 1, "");

    private final GradeFrequencies shares;
    private final String words;

    BirthPartGrade(double own, double kin, double chance, String words) {
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

    /** The parts that can be read, and a packed date of the roll. A month alone says nothing. */
    public static BirthPartGrade of(WrittenBirthDate written, int onRoll) {
        boolean isMonthAlone = written.year() == 0 && written.day() == 0;
        if (onRoll == PackedDate.UNKNOWN || isMonthAlone) {
            return UNKNOWN;
        }
        boolean year = written.year() == 0 || Digits.spread(written.year()) == PackedDate.year(onRoll);
        int monthAndDay = PackedDate.day(onRoll);
        boolean month = written.month() == 0 || Digits.spread(written.month()) == monthAndDay >>> 8;
        boolean day = written.day() == 0 || Digits.spread(written.day()) == (monthAndDay & 0xff);
        if (!year || !month || !day) {
            return DIFFERENT;
        }
        return written.year() == 0 ? WITHOUT_YEAR : written.month() == 0 ? YEAR : YEAR_AND_MONTH;
    }
}
