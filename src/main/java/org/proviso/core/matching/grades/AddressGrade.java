package org.proviso.core.matching.grades;

import java.util.function.UnaryOperator;
import org.proviso.core.matching.spelling.Digits;
import org.proviso.core.matching.spelling.NameText;
import org.proviso.core.matching.spelling.SpellingDifference;
import org.proviso.core.matching.spelling.StreetAddress;

/** How two residence addresses compare, best first; people move. The shares are as in {@link GradeFrequencies}. */
public enum AddressGrade implements Grade {
    SAME(0.55, 0.5, 0, "Same address."),
    OTHER_UNIT(0.03, 0.03, 0, "Same building, different unit."),
    CLOSE(0.08, 0.07, 0.0003, "Address differs by one error."),
    SAME_STREET(0.02, 0.02, 0.004, "Same street, different house number."),
    SAME_ZIP(0.12, 0.16, 0.1, "Different street in the same ZIP code."),
    ELSEWHERE(0.2, 0.22, 0.9, "Different address."),
    UNKNOWN(1, 1, 1, "");

    private static final int MOST_DIGITS = 99_999_999;

    private final GradeFrequencies shares;
    private final String words;

    AddressGrade(double own, double kin, double chance, String words) {
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

    /** Two addresses and their ZIP codes (0 where none is known); asked for a street's name without directional and suffix. */
    public static AddressGrade of(StreetAddress a, int zipA, StreetAddress b, int zipB, UnaryOperator<String> bodies) {
        boolean noStreet = a.street().isEmpty() || b.street().isEmpty();
        if (noStreet) {
            return zipA == 0 || zipB == 0 ? UNKNOWN : zipA == zipB ? SAME_ZIP : ELSEWHERE;
        }
        if (a.street().equals(b.street())) {
            return sameStreet(a, b);
        }
        if (a.houseNumber() == b.houseNumber()
                && a.houseNumber() != 0
                && near(bodies.apply(a.street()), bodies.apply(b.street()))) {
            return CLOSE;
        }
        return zipA != 0 && zipA == zipB ? SAME_ZIP : ELSEWHERE;
    }

    private static AddressGrade sameStreet(StreetAddress a, StreetAddress b) {
        if (a.houseNumber() == 0 || b.houseNumber() == 0) {
            return SAME_STREET;
        }
        if (a.houseNumber() == b.houseNumber()) {
            boolean oneOpen = a.door().isEmpty() || b.door().isEmpty();
            return oneOpen || a.door().equals(b.door()) ? SAME : OTHER_UNIT;
        }
        return houseSlip(a.houseNumber(), b.houseNumber()) ? CLOSE : SAME_STREET;
    }

    private static boolean houseSlip(int a, int b) {
        return a <= MOST_DIGITS && b <= MOST_DIGITS && Digits.slip(Digits.spread(a), Digits.spread(b));
    }

    /** The same street body with a different directional or suffix, or one spelling error. */
    private static boolean near(String a, String b) {
        return a.equals(b) || SpellingDifference.of(NameText.joined(a), NameText.joined(b)) != SpellingDifference.OTHER;
    }
}
