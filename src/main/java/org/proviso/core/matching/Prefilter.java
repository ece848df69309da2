package org.proviso.core.matching;

import org.proviso.core.matching.Weights.Field;
import org.proviso.core.matching.grades.AddressGrade;
import org.proviso.core.matching.grades.BirthPartGrade;
import org.proviso.core.matching.grades.DateGrade;
import org.proviso.core.matching.grades.GivenGrade;
import org.proviso.core.matching.grades.GradeFrequencies;
import org.proviso.core.matching.grades.LicenseGrade;
import org.proviso.core.matching.grades.NumberGrade;
import org.proviso.core.matching.grades.SurnameGrade;
import org.proviso.core.matching.index.RollColumns;
import org.proviso.core.matching.index.RollFrequencies;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.index.SearchStage;
import org.proviso.core.matching.spelling.IdentifyingNumbers;
import org.proviso.core.matching.spelling.NameSuffix;
import org.proviso.core.matching.spelling.PackedDate;

/**
 * Lets only those voters through to the full comparison whom the fields looked at so far leave a chance: the most that the
 * others could still bring is added to what is known. The numbers are looked at first, then the names. For one thread.
 */
final class Prefilter {

    /** The most that a surname or given name brings that is not the one written, and an address at another number. */
    private static final double OTHER_SURNAME = 9;

    private static final double OTHER_GIVEN = 7;
    private static final double MOST_ADDRESS = 13;
    private static final double OTHER_HOUSE = 3;
    private static final double CONVINCING = 16;
    private static final double MOST_REST = 6;
    private static final double RAREST_DAY = 0.00001;

    private final RollColumns columns;
    private final RollFrequencies frequencies;
    private final Weights weights;
    private final double[] dates;
    private final double[] last4;
    private final double[] licenses;
    private final double addresses;
    private final double otherSurnameBits;
    private final double otherDate;
    private final double nearDate;
    private final double mostOfBirthPart;
    private final double leastAtStart;
    private double least;
    private int surname;
    private int given;
    private double surnameBits;
    private double givenBits;
    private double restBits;
    private double numberBits;

    /** The least sum of bits that matters: far below what "nobody on the roll" weighs. */
    Prefilter(RollIndex index, RollFrequencies frequencies, Weights weights) {
        this.frequencies = frequencies;
        this.weights = weights;
        columns = index.columns();
        dates = weights.most(Field.DATE, RAREST_DAY);
        last4 = weights.most(Field.LAST4, 1);
        licenses = weights.most(Field.LICENSE, 1);
        addresses = Math.max(OTHER_HOUSE, weights.own(Field.ADDRESS, AddressGrade.CLOSE, 0));
        otherDate = Math.max(dates[DateGrade.CONFLICT.ordinal()], weights.kin(Field.DATE, DateGrade.CONFLICT, 0));
        nearDate = nearDate();
        mostOfBirthPart = weights.own(Field.BIRTH_PART, BirthPartGrade.YEAR_AND_MONTH, 0);
        otherSurnameBits = weights.own(Field.SURNAME, SurnameGrade.DIFFERENT, 0);
        leastAtStart = GradeFrequencies.log2(Math.max(1, index.voters())) - 8;
        least = leastAtStart;
    }

    /** Weighs the names written once for all voters to come. */
    void start(EnvelopePerson claim, int surnameNumber, int givenNumber) {
        surname = surnameNumber;
        given = givenNumber;
        surnameBits = weights.own(Field.SURNAME, SurnameGrade.EXACT, frequencies.surname(Math.max(0, surname)));
        givenBits = weights.own(Field.GIVEN, GivenGrade.EXACT, frequencies.given(Math.max(0, given)));
        boolean more = !claim.name().middle().isEmpty() || claim.name().suffix() != NameSuffix.NONE;
        restBits = more ? MOST_REST : 0;
        if (claim.writtenBirth().isAnything()) {
            restBits += mostOfBirthPart;
        }
        least = leastAtStart;
    }

    /** Whether a voter who weighs so much is found all but certainly, so that other spellings need no look. */
    boolean convinces(double bits) {
        return bits >= leastAtStart + CONVINCING;
    }

    /** From now on only voters matter who weigh so much. */
    void raise(double bits) {
        least = Math.max(least, bits);
    }

    /** The most that a voter of a later stage, or a relative of that voter, weighs whom no earlier one found. */
    double most(EnvelopePerson claim, SearchStage stage) {
        double number = claim.last4() == IdentifyingNumbers.NONE ? 0 : Math.max(0, last4[NumberGrade.SLIP.ordinal()]);
        double exact = Math.max(surnameBits, OTHER_SURNAME);
        double known = claim.birth() == PackedDate.UNKNOWN ? 0 : 1;
        double rest = Math.max(givenBits, OTHER_GIVEN) + addresses + restBits;
        return rest
                + switch (stage) {
                    case SAME, RESPELLED -> Double.POSITIVE_INFINITY;
                    case NEAR -> Math.max(exact + known * nearDate + number, other(claim, known * nearDate, number));
                    case OTHER_DATE -> exact + known * nearDate + number;
                    case NAME_ONLY -> exact + known * otherDate + number;
                    case UNDATED -> exact + number;
                };
    }

    /** With another surname the date may be the same, or the last four, but not both. */
    private double other(EnvelopePerson claim, double nearDate, double number) {
        double date = claim.birth() == PackedDate.UNKNOWN ? 0 : dates[DateGrade.SAME.ordinal()];
        double same = claim.last4() == IdentifyingNumbers.NONE ? 0 : last4[NumberGrade.SAME.ordinal()];
        return OTHER_SURNAME + Math.max(date + number, nearDate + same);
    }

    private double nearDate() {
        double most = 0;
        for (DateGrade grade : new DateGrade[] {DateGrade.SLIP, DateGrade.YEAR_OFF, DateGrade.ONE_PART}) {
            most = Math.max(most, dates[grade.ordinal()]);
        }
        return most;
    }

    boolean passes(EnvelopePerson claim, int voter, int birth) {
        double bits = restBits
                + dates[DateGrade.of(claim.birth(), birth).ordinal()]
                + last4[NumberGrade.of(claim.last4(), columns.last4(voter)).ordinal()];
        if (claim.license() != 0) {
            bits += licenses[
                    LicenseGrade.of(claim.license(), columns.license(voter)).ordinal()];
        }
        numberBits = bits;
        bits += columns.surname(voter) == surname ? surnameBits : OTHER_SURNAME;
        bits += columns.given(voter) == given ? givenBits : OTHER_GIVEN;
        return reaches(claim, voter, bits);
    }

    /** The same once the surname of the voter that just passed is known to be another. */
    boolean passesOther(EnvelopePerson claim, int voter) {
        double names = otherSurnameBits + (columns.given(voter) == given ? givenBits : OTHER_GIVEN);
        return reaches(claim, voter, numberBits + names);
    }

    /** The same once the names of the voter that just passed are compared and weigh so much. */
    boolean passesNamed(EnvelopePerson claim, int voter, double nameBits) {
        return reaches(claim, voter, numberBits + nameBits);
    }

    private boolean reaches(EnvelopePerson claim, int voter, double bits) {
        return bits + OTHER_HOUSE >= least || (bits + MOST_ADDRESS >= least && sameHouse(claim, voter));
    }

    private boolean sameHouse(EnvelopePerson claim, int voter) {
        int house = columns.house(voter);
        return house == claim.home().houseNumber()
                || house == claim.formerHome().houseNumber();
    }
}
