package org.proviso.core.matching;

/**
 * How two surnames compare, best first; the shares are as in {@link Shares}.
 */
enum SurnameGrade implements Grade {
    EXACT(0.84, 0.72, 0, "Same surname."),
    FORMER(0.02, 0.01, 0, "Surname is a former, maiden or middle name on the other paper."),
    PART(0.025, 0.022, 0, "Surname is one half of the other."),
    SWAPPED(0.008, 0.0004, 0, "Surname and given name are exchanged."),
    CLOSE(0.055, 0.047, 0, "Surname differs by a slip of spelling."),
    SOUNDS(0.015, 0.013, 0.004, "Surname sounds alike."),
    RESEMBLES(0.01, 0.01, 0.005, "Surname resembles, but both are common names."),
    DIFFERENT(0.035, 0.22, 0.98, "Other surname."),
    UNKNOWN(1, 1, 1, "");

    private final Shares shares;
    private final String words;

    SurnameGrade(double own, double kin, double chance, String words) {
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

    /** Two surnames in one spelling; both common names that differ by a letter are taken for two names. */
    static SurnameGrade of(String a, String b, boolean bothCommon) {
        if (a.isEmpty() || b.isEmpty()) {
            return UNKNOWN;
        }
        String wholeA = NameText.joined(a);
        String wholeB = NameText.joined(b);
        if (wholeA.equals(wholeB)) {
            return EXACT;
        }
        if (sharesHalf(a, b)) {
            return PART;
        }
        return switch (Spelling.of(wholeA, wholeB)) {
            case SLIP -> bothCommon ? RESEMBLES : CLOSE;
            case SOUND -> bothCommon ? RESEMBLES : SOUNDS;
            case OTHER -> DIFFERENT;
        };
    }

    private static boolean sharesHalf(String a, String b) {
        if (a.indexOf(' ') < 0 && b.indexOf(' ') < 0) {
            return false;
        }
        for (String half : a.split(" ", 0)) {
            for (String other : b.split(" ", 0)) {
                if (half.length() > 2 && (half.equals(other) || (half.length() > 4 && slip(half, other)))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean slip(String a, String b) {
        return Math.abs(a.length() - b.length()) < 2 && EditDistance.optimalStringAlignment(a, b) == 1;
    }
}
