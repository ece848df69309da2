package org.proviso.core.matching;

/**
 * Turns grades into bits of evidence (Fellegi-Sunter weights), for two explanations against a stranger: the voter
 * cast the envelope, or a relative of the voter did. Agreement on a rare name weighs more than on a common one.
 */
final class Scorer {

    static final double RAREST_NAME = 0.00001;
    private static final double FEWEST_NEIGHBORS = 0.0001;
    private static final double SAME_NAMED = 0.8;
    private static final double DAYS_OF_YEAR = 365.25;

    private final RollIndex index;
    private final BirthYears years;

    Scorer(RollIndex index, BirthYears years) {
        this.index = index;
        this.years = years;
    }

    Score score(Claim claim, Comparison pair) {
        double[] bits = new double[2];
        add(bits, pair.surname(), surnameChance(pair));
        add(bits, pair.given(), givenChance(pair));
        addMiddle(bits, pair);
        add(bits, pair.suffix(), 1);
        add(bits, pair.date(), years.share(PackedDate.year(claim.birth())) / DAYS_OF_YEAR);
        add(bits, pair.last4(), 1);
        add(bits, pair.license(), 1);
        add(bits, pair.address(), neighbors(pair));
        return new Score(pair, bits[0], bits[1]);
    }

    private static void add(double[] bits, Grade grade, double chanceByName) {
        bits[0] += grade.shares().ownBits(chanceByName);
        bits[1] += grade.shares().kinBits(chanceByName);
    }

    /** A child with a parent's given name mostly has the parent's middle name too. */
    private static void addMiddle(double[] bits, Comparison pair) {
        double before = bits[1];
        add(bits, pair.middle(), 1);
        if (pair.given() == GivenGrade.EXACT) {
            bits[1] = before + SAME_NAMED * pair.middle().shares().ownBits(1);
        }
    }

    private double surnameChance(Comparison pair) {
        int count = index.words().surnames().count(index.columns().surname(pair.voter()));
        double share = Math.max(RAREST_NAME, index.share(count));
        return switch (pair.surname()) {
            case FORMER -> 3 * share;
            case PART -> Math.max(3 * share, 0.0005);
            case CLOSE -> Math.max(3 * share, 0.0002);
            default -> share;
        };
    }

    private double givenChance(Comparison pair) {
        int count = index.words().givens().count(index.columns().given(pair.voter()));
        double share = Math.max(RAREST_NAME, index.share(count));
        return switch (pair.given()) {
            case NICKNAME -> Math.max(3 * share, 0.001);
            case SHORT -> Math.max(3 * share, 0.004);
            case MIDDLE -> Math.max(3 * share, 0.002);
            case CLOSE -> Math.max(3 * share, 0.0005);
            default -> share;
        };
    }

    private double neighbors(Comparison pair) {
        int voter = pair.voter();
        int count =
                index.household(index.columns().house(voter), index.columns().street(voter));
        return Math.max(FEWEST_NEIGHBORS, index.share(count));
    }
}
