package org.proviso.core.matching.grades;

import org.proviso.core.matching.spelling.Nicknames;
import org.proviso.core.matching.spelling.SpellingDifference;

/** How two given names compare, best first; the shares are as in {@link GradeFrequencies}. */
public enum GivenGrade implements Grade {
    EXACT(0.84, 0.07, 0, "Same first name."),
    NICKNAME(0.06, 0.01, 0, "First name is a known short form of the other."),
    SHORT(0.015, 0.02, 0, "First name may be a short form of the other."),
    MIDDLE(0.02, 0.01, 0, "First name is the middle name on the other record."),
    SWAPPED(1, 0.1, 0, ""),
    CLOSE(0.045, 0.01, 0, "First name differs by a spelling error."),
    INITIAL(0.015, 0.06, 0.07, "First name is only an initial."),
    SOUNDS(0.012, 0.01, 0.004, "First name sounds similar."),
    RESEMBLES(0.007, 0.04, 0.008, "First name is similar, but both are common names."),
    DIFFERENT(0.004, 0.85, 0.97, "Different first name."),
    UNKNOWN(1, 1, 1, "");

    private final GradeFrequencies shares;
    private final String words;

    GivenGrade(double own, double kin, double chance, String words) {
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

    /** Two first given names in one spelling. */
    public static GivenGrade of(String a, String b, boolean bothCommon) {
        if (a.isEmpty() || b.isEmpty()) {
            return UNKNOWN;
        }
        if (a.equals(b)) {
            return EXACT;
        }
        if (a.length() == 1 || b.length() == 1) {
            return a.charAt(0) == b.charAt(0) ? INITIAL : DIFFERENT;
        }
        if (Nicknames.kin(a, b)) {
            return NICKNAME;
        }
        if (Nicknames.shortens(a, b) || Nicknames.shortens(b, a)) {
            return SHORT;
        }
        return switch (SpellingDifference.of(a, b)) {
            case SLIP -> bothCommon ? RESEMBLES : CLOSE;
            case SOUND -> bothCommon ? RESEMBLES : SOUNDS;
            case OTHER -> DIFFERENT;
        };
    }
}
