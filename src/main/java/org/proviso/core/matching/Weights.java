package org.proviso.core.matching;

import org.proviso.core.matching.grades.AddressGrade;
import org.proviso.core.matching.grades.BirthPartGrade;
import org.proviso.core.matching.grades.DateGrade;
import org.proviso.core.matching.grades.GivenGrade;
import org.proviso.core.matching.grades.Grade;
import org.proviso.core.matching.grades.GradeFrequencies;
import org.proviso.core.matching.grades.LicenseGrade;
import org.proviso.core.matching.grades.MiddleGrade;
import org.proviso.core.matching.grades.NumberGrade;
import org.proviso.core.matching.grades.SuffixGrade;
import org.proviso.core.matching.grades.SurnameGrade;

/**
 * What each grade weighs: the shares of {@link GradeFrequencies} as logarithms, by field and grade. The ones for "the voter cast it"
 * may be estimated from the election at hand (see {@link WeightEstimation}); the others stay as they were reasoned.
 */
final class Weights {

    /** The fields of a comparison, in the order in which they are weighed. */
    enum Field {
        SURNAME(SurnameGrade.values()),
        GIVEN(GivenGrade.values()),
        MIDDLE(MiddleGrade.values()),
        SUFFIX(SuffixGrade.values()),
        DATE(DateGrade.values()),
        BIRTH_PART(BirthPartGrade.values()),
        LAST4(NumberGrade.values()),
        LICENSE(LicenseGrade.values()),
        ADDRESS(AddressGrade.values());

        private final Grade[] grades;

        Field(Grade[] grades) {
            this.grades = grades;
        }

        Grade[] grades() {
            return grades;
        }
    }

    /** As reasoned, before anything of an election is known. */
    static final Weights REASONED = new Weights(new double[0][], Prior.REASONED);

    private final double[][] own = new double[Field.values().length][];
    private final double[][] kin = new double[own.length][];
    private final double[][] chance = new double[own.length][];
    private final boolean[][] byName = new boolean[own.length][];
    private final Prior prior;

    /** Before looking: the voter of an envelope is on the roll, is not but a relative is, is not. */
    record Prior(double onRoll, double relativeOnRoll, double onNoRoll) {

        /** Common practice. */
        static final Prior REASONED = new Prior(0.75, 0.10, 0.15);
    }

    /** The estimated shares of the voter's own grades, by field and grade; a field left out keeps the reasoned ones. */
    Weights(double[][] estimated, Prior prior) {
        this.prior = prior;
        for (Field field : Field.values()) {
            int at = field.ordinal();
            int grades = field.grades().length;
            own[at] = new double[grades];
            kin[at] = new double[grades];
            chance[at] = new double[grades];
            byName[at] = new boolean[grades];
            for (int grade = 0; grade < grades; grade++) {
                GradeFrequencies shares = field.grades()[grade].shares();
                boolean reasoned = at >= estimated.length || estimated[at].length == 0;
                own[at][grade] = GradeFrequencies.log2(reasoned ? shares.own() : estimated[at][grade]);
                kin[at][grade] = GradeFrequencies.log2(shares.kin());
                byName[at][grade] = shares.byName();
                chance[at][grade] = shares.byName() ? 0 : GradeFrequencies.log2(shares.chance());
            }
        }
    }

    Prior prior() {
        return prior;
    }

    /** Bits of evidence that the voter, and no stranger, cast it; {@code chanceByName} is a logarithm. */
    double own(Field field, Enum<?> grade, double chanceByName) {
        return own[field.ordinal()][grade.ordinal()] - chance(field, grade, chanceByName);
    }

    /** Bits of evidence that a relative, and no stranger, cast it. */
    double kin(Field field, Enum<?> grade, double chanceByName) {
        return kin[field.ordinal()][grade.ordinal()] - chance(field, grade, chanceByName);
    }

    private double chance(Field field, Enum<?> grade, double chanceByName) {
        int at = field.ordinal();
        return byName[at][grade.ordinal()] ? chanceByName : chance[at][grade.ordinal()];
    }

    /** The most bits each grade of a field can bring: the chance that depends on a name is this one at least. */
    double[] most(Field field, double leastChance) {
        double[] most = new double[field.grades().length];
        double log = GradeFrequencies.log2(leastChance);
        for (int grade = 0; grade < most.length; grade++) {
            most[grade] = own[field.ordinal()][grade]
                    - (byName[field.ordinal()][grade] ? log : chance[field.ordinal()][grade]);
        }
        return most;
    }
}
