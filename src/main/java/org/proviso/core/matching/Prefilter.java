package org.proviso.core.matching;

import java.util.Arrays;

/**
 * Lets only those voters through to the comparing of names whose numbers leave them a chance: the most that the names
 * and the address could still bring is added to what the numbers say. For one thread.
 */
final class Prefilter {

    /** The most that a surname or given name brings that is not the one written, and an address at another number. */
    private static final double OTHER_SURNAME = 9;

    private static final double OTHER_GIVEN = 7;
    private static final double MOST_ADDRESS = 13;
    private static final double OTHER_HOUSE = 3;
    private static final double MOST_REST = 6;
    private static final double RAREST_DAY = 0.00001;

    private static final double[] DATES = bits(DateGrade.values());
    private static final double[] LAST4 = bits(NumberGrade.values());
    private static final double[] LICENSES = bits(LicenseGrade.values());

    private final RollIndex index;
    private final RollColumns columns;
    private final double least;
    private int surname;
    private int given;
    private double surnameBits;
    private double givenBits;
    private double restBits;

    /** The least sum of bits that matters: far below what "nobody on the roll" weighs. */
    Prefilter(RollIndex index) {
        this.index = index;
        columns = index.columns();
        least = Shares.log2(Math.max(1, index.size())) - 8;
    }

    /** Weighs the names written once for all voters to come. */
    void start(Claim claim) {
        surname = index.words().surnames().find(claim.name().surname());
        given = index.words().givens().find(claim.name().given());
        surnameBits = SurnameGrade.EXACT.shares().ownBits(share(index.words().surnames(), surname));
        givenBits = GivenGrade.EXACT.shares().ownBits(share(index.words().givens(), given));
        boolean more = !claim.name().middle().isEmpty() || claim.name().suffix() != NameSuffix.NONE;
        restBits = more ? MOST_REST : 0;
    }

    private double share(Dictionary names, int code) {
        return Math.max(Scorer.RAREST_NAME, index.share(code < 0 ? 0 : names.count(code)));
    }

    boolean passes(Claim claim, int voter) {
        double bits = restBits
                + DATES[DateGrade.of(claim.birth(), columns.birth(voter)).ordinal()]
                + LAST4[NumberGrade.of(claim.last4(), columns.last4(voter)).ordinal()];
        if (claim.license() != 0) {
            bits += LICENSES[
                    LicenseGrade.of(claim.license(), columns.license(voter)).ordinal()];
        }
        bits += columns.surname(voter) == surname ? surnameBits : OTHER_SURNAME;
        bits += columns.given(voter) == given ? givenBits : OTHER_GIVEN;
        return bits + OTHER_HOUSE >= least || bits + MOST_ADDRESS >= least && sameHouse(claim, voter);
    }

    private boolean sameHouse(Claim claim, int voter) {
        int house = columns.house(voter);
        return house == claim.home().houseNumber()
                || house == claim.formerHome().houseNumber();
    }

    private static double[] bits(Grade[] grades) {
        return Arrays.stream(grades)
                .mapToDouble(grade -> grade.shares().ownBits(RAREST_DAY))
                .toArray();
    }
}
