package org.proviso.core.matching;

import org.proviso.core.matching.Weights.Field;

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
    private static final double MOST_REST = 6;
    private static final double RAREST_DAY = 0.00001;

    private final RollColumns columns;
    private final RollIndex index;
    private final RollFrequencies frequencies;
    private final Weights weights;
    private final double[] dates;
    private final double[] last4;
    private final double[] licenses;
    private final double least;
    private int surname;
    private int given;
    private double surnameBits;
    private double givenBits;
    private double restBits;
    private double numberBits;

    /** The least sum of bits that matters: far below what "nobody on the roll" weighs. */
    Prefilter(RollIndex index, RollFrequencies frequencies, Weights weights) {
        this.index = index;
        this.frequencies = frequencies;
        this.weights = weights;
        columns = index.columns();
        dates = weights.most(Field.DATE, RAREST_DAY);
        last4 = weights.most(Field.LAST4, 1);
        licenses = weights.most(Field.LICENSE, 1);
        least = Shares.log2(Math.max(1, index.voters())) - 8;
    }

    /** Weighs the names written once for all voters to come. */
    void start(Claim claim) {
        surname = index.words().surnames().find(claim.name().surname());
        given = index.words().givens().find(claim.name().given());
        surnameBits = weights.own(Field.SURNAME, SurnameGrade.EXACT, frequencies.surname(Math.max(0, surname)));
        givenBits = weights.own(Field.GIVEN, GivenGrade.EXACT, frequencies.given(Math.max(0, given)));
        boolean more = !claim.name().middle().isEmpty() || claim.name().suffix() != NameSuffix.NONE;
        restBits = more ? MOST_REST : 0;
    }

    boolean passes(Claim claim, int voter, int birth) {
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

    /** The same once the names of the voter that just passed are compared and weigh so much. */
    boolean passesNamed(Claim claim, int voter, double nameBits) {
        return reaches(claim, voter, numberBits + nameBits);
    }

    private boolean reaches(Claim claim, int voter, double bits) {
        return bits + OTHER_HOUSE >= least || bits + MOST_ADDRESS >= least && sameHouse(claim, voter);
    }

    private boolean sameHouse(Claim claim, int voter) {
        int house = columns.house(voter);
        return house == claim.home().houseNumber()
                || house == claim.formerHome().houseNumber();
    }
}
