package org.proviso.core.matching;

/** How the last four digits of the identification number compare; the shares are as in {@link Shares}. */
enum NumberGrade implements Grade {
    SAME(0.955, 0.0001, 0.0001, "Same last 4 of SSN."),
    SLIP(0.03, 0.0039, 0.0039, "Last 4 of SSN differs by one digit."),
    DIFFERENT(0.012, 0.996, 0.996, "Different last 4 of SSN."),
    UNKNOWN(1, 1, 1, "");

    private final Shares shares;
    private final String words;

    NumberGrade(double own, double kin, double chance, String words) {
        this.shares = new Shares(own, kin, chance);
        this.words = words;
    }

    @Override
    public Shares shares() {
        return shares;
    }

    @Override
    public String words() {
        return words;
    }

    static NumberGrade of(int a, int b) {
        if (a == Numbers.NONE || b == Numbers.NONE) {
            return UNKNOWN;
        }
        if (a == b) {
            return SAME;
        }
        return Digits.slip(a, b) ? SLIP : DIFFERENT;
    }
}
