package org.proviso.core.matching;

/**
 * Lets only those voters through to the comparing of names whose numbers leave them a chance: the most that the names
 * and the address could still bring is added to what the numbers say.
 */
final class Prefilter {

    private static final double MOST_SURNAME = 17;
    private static final double OTHER_SURNAME = 10;
    private static final double MOST_GIVEN = 13;
    private static final double OTHER_GIVEN = 8;
    private static final double MOST_ADDRESS = 13;
    private static final double OTHER_HOUSE = 3;

    private final RollColumns columns;
    private final RollWords words;
    private final double least;

    /** The least sum of bits that matters: far below what "nobody on the roll" weighs. */
    Prefilter(RollIndex index) {
        columns = index.columns();
        words = index.words();
        least = Shares.log2(Math.max(1, index.size())) - 9;
    }

    boolean passes(Claim claim, int voter) {
        double bits = numbers(claim, voter);
        if (bits + MOST_SURNAME + MOST_GIVEN + MOST_ADDRESS < least) {
            return false;
        }
        int house = columns.house()[voter];
        boolean sameHouse = house == claim.home().houseNumber()
                || house == claim.formerHome().houseNumber();
        boolean sameSurname = words.surnames()
                .text(columns.surname()[voter])
                .equals(claim.name().surname());
        boolean sameGiven =
                words.givens().text(columns.given()[voter]).equals(claim.name().given());
        return bits
                        + (sameSurname ? MOST_SURNAME : OTHER_SURNAME)
                        + (sameGiven ? MOST_GIVEN : OTHER_GIVEN)
                        + (sameHouse ? MOST_ADDRESS : OTHER_HOUSE)
                >= least;
    }

    private double numbers(Claim claim, int voter) {
        return bits(DateGrade.of(claim.birth(), columns.birth()[voter]), 0.00001)
                + bits(NumberGrade.of(claim.last4(), columns.last4()[voter]), 1)
                + bits(LicenseGrade.of(claim.license(), columns.license()[voter]), 1);
    }

    private static double bits(Grade grade, double chance) {
        Shares shares = grade.shares();
        return shares.ownBits(shares.chance() == 0 ? chance : shares.chance());
    }
}
