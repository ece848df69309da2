package org.proviso.core.matching;

import org.proviso.core.matching.Weights.Field;
import org.proviso.core.matching.grades.AddressGrade;
import org.proviso.core.matching.grades.GivenGrade;
import org.proviso.core.matching.grades.GradeFrequencies;
import org.proviso.core.matching.grades.SurnameGrade;
import org.proviso.core.matching.index.RollFrequencies;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.spelling.PackedDate;

/**
 * Turns grades into bits of evidence (Fellegi-Sunter weights), for two explanations against a stranger: the voter
 * cast the envelope, or a relative of the voter did. Agreement on a rare name weighs more than on a common one.
 */
final class MatchScorer {

    private static final double SAME_NAMED = 0.8;
    private static final double THREEFOLD = GradeFrequencies.log2(3);

    private final RollIndex index;
    private final RollFrequencies frequencies;
    private final Weights weights;

    MatchScorer(RollIndex index, RollFrequencies frequencies, Weights weights) {
        this.index = index;
        this.frequencies = frequencies;
        this.weights = weights;
    }

    MatchScore score(EnvelopePerson claim, VoterComparison pair) {
        double surname = surnameChance(pair.surname(), pair.voter());
        double given = givenChance(pair.given(), pair.voter());
        double day = frequencies.day(PackedDate.year(claim.birth()));
        double home = neighbors(pair);
        double own = weights.own(Field.SURNAME, pair.surname(), surname)
                + weights.own(Field.GIVEN, pair.given(), given)
                + weights.own(Field.MIDDLE, pair.middle(), 0)
                + weights.own(Field.SUFFIX, pair.suffix(), 0)
                + weights.own(Field.DATE, pair.date(), day)
                + weights.own(Field.BIRTH_PART, pair.birthPart(), 0)
                + weights.own(Field.LAST4, pair.last4(), 0)
                + weights.own(Field.LICENSE, pair.license(), 0)
                + weights.own(Field.ADDRESS, pair.address(), home);
        double kin = weights.kin(Field.SURNAME, pair.surname(), surname)
                + weights.kin(Field.GIVEN, pair.given(), given)
                + kinMiddle(pair)
                + weights.kin(Field.SUFFIX, pair.suffix(), 0)
                + weights.kin(Field.DATE, pair.date(), day)
                + weights.kin(Field.BIRTH_PART, pair.birthPart(), 0)
                + weights.kin(Field.LAST4, pair.last4(), 0)
                + weights.kin(Field.LICENSE, pair.license(), 0)
                + weights.kin(Field.ADDRESS, pair.address(), home);
        return new MatchScore(pair, own, kin);
    }

    /** What the names alone weigh. */
    double nameBits(SurnameGrade surname, GivenGrade given, int voter) {
        return weights.own(Field.SURNAME, surname, surnameChance(surname, voter))
                + weights.own(Field.GIVEN, given, givenChance(given, voter));
    }

    /** A child with a parent's given name mostly has the parent's middle name too. */
    private double kinMiddle(VoterComparison pair) {
        return pair.given() == GivenGrade.EXACT
                ? SAME_NAMED * weights.own(Field.MIDDLE, pair.middle(), 0)
                : weights.kin(Field.MIDDLE, pair.middle(), 0);
    }

    private double surnameChance(SurnameGrade grade, int voter) {
        double share = frequencies.surname(index.columns().surname(voter));
        return switch (grade) {
            case FORMER -> THREEFOLD + share;
            case PART -> Math.max(THREEFOLD + share, Chances.PART);
            case CLOSE -> Math.max(THREEFOLD + share, Chances.CLOSE_SURNAME);
            default -> share;
        };
    }

    private double givenChance(GivenGrade grade, int voter) {
        double share = frequencies.given(index.columns().given(voter));
        return switch (grade) {
            case NICKNAME -> Math.max(THREEFOLD + share, Chances.NICKNAME);
            case SHORT -> Math.max(THREEFOLD + share, Chances.SHORT);
            case MIDDLE -> Math.max(THREEFOLD + share, Chances.MIDDLE);
            case CLOSE -> Math.max(THREEFOLD + share, Chances.CLOSE_GIVEN);
            default -> share;
        };
    }

    private double neighbors(VoterComparison pair) {
        if (pair.address().compareTo(AddressGrade.OTHER_UNIT) > 0) {
            return 0;
        }
        int voter = pair.voter();
        return frequencies.household(
                index.household(index.columns().house(voter), index.columns().street(voter)));
    }

    /** The least chance of names that only resemble, as logarithms: many other names do so too. */
    private static final class Chances {

        static final double PART = GradeFrequencies.log2(0.0005);
        static final double CLOSE_SURNAME = GradeFrequencies.log2(0.0002);
        static final double NICKNAME = GradeFrequencies.log2(0.001);
        static final double SHORT = GradeFrequencies.log2(0.004);
        static final double MIDDLE = GradeFrequencies.log2(0.002);
        static final double CLOSE_GIVEN = GradeFrequencies.log2(0.0005);
    }
}
