package org.proviso.core.matching.grades;

import org.proviso.core.matching.spelling.EditDistance;
import org.proviso.core.matching.spelling.NameText;
import org.proviso.core.matching.spelling.SpellingDifference;

/**
 * How two surnames compare, best first; the shares are as in {@link GradeFrequencies}.
 */
public enum SurnameGrade implements Grade {
    EXACT(0.84, 0.72, 0, "Same last name."),
    FORMER(0.02, 0.01, 0, "Last name is a former, maiden or middle name on the other record."),
    PART(0.025, 0.022, 0, "Last name is one half of the other."),
    SWAPPED(0.008, 0.0004, 0, "Last name and first name are swapped."),
    CLOSE(0.055, 0.047, 0, "Last name differs by a spelling error."),
    SOUNDS(0.015, 0.013, 0.004, "Last name sounds similar."),
    RESEMBLES(0.01, 0.01, 0.005, "Last name is similar, but both are common names."),
    DIFFERENT(0.035, 0.22, 0.98, "Different last name."),
    UNKNOWN(1, 1, 1, "");

    private final GradeFrequencies shares;
    private final String words;

    SurnameGrade(double own, double kin, double chance, String words) {
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

    /** Two surnames in one spelling; both common names that differ by a letter are taken for two names. */
    public static SurnameGrade of(String a, String b, boolean bothCommon) {
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
        return switch (SpellingDifference.of(wholeA, wholeB)) {
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
