package org.proviso.core.matching.spelling;

import java.util.Set;

/** A generation's mark after a name. A second and a junior are not told apart: families use both for the same person. */
public enum NameSuffix {
    NONE(Set.of()),
    SENIOR(Set.of("SR", "SENIOR", "SNR", "I", "1ST")),
    JUNIOR(Set.of("JR", "JUNIOR", "JNR", "II", "2ND")),
    THIRD(Set.of("III", "3RD", "THIRD")),
    FOURTH(Set.of("IV", "4TH", "FOURTH")),
    FIFTH(Set.of("V", "5TH", "FIFTH"));

    private static final NameSuffix[] ALL = values();

    private final Set<String> spellings;

    NameSuffix(Set<String> spellings) {
        this.spellings = spellings;
    }

    public static NameSuffix at(int ordinal) {
        return ALL[ordinal];
    }

    /** The mark a folded word spells, or none. */
    public static NameSuffix of(String folded) {
        for (NameSuffix suffix : ALL) {
            if (!folded.isEmpty() && suffix.spellings.contains(folded)) {
                return suffix;
            }
        }
        return NONE;
    }

    /** The mark at the end of a folded text of two words or more, or none; a lone V or I is an initial. */
    public static NameSuffix atEnd(String folded) {
        int space = folded.lastIndexOf(' ');
        return space < 0 || folded.length() - space < 3 ? NONE : of(folded.substring(space + 1));
    }
}
