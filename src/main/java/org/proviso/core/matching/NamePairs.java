package org.proviso.core.matching;

import java.util.Arrays;
import org.proviso.core.matching.index.ListNumbering;
import org.proviso.core.matching.index.TextDictionary;
import org.proviso.core.matching.index.WrittenName;

/** Remembers how pairs of names compared: the same few thousand pairs come again and again. For one thread. */
final class NamePairs {

    private static final int SLOTS = 1 << 16;
    private static final double COMMON_SHARE = 0.0001;
    private static final int COMMON_COUNT = 3;

    private final TextDictionary names;
    private final double commonFrom;
    private final Compared compared;
    private final long[] pairs = new long[SLOTS];
    private final byte[] grades = new byte[SLOTS];

    /** Compares two names; {@code bothCommon} when each is borne by enough voters to be no misspelling. */
    interface Compared {
        int grade(String a, String b, boolean bothCommon);
    }

    NamePairs(TextDictionary names, int voters, Compared compared) {
        this.names = names;
        this.compared = compared;
        commonFrom = Math.max(COMMON_COUNT, voters * COMMON_SHARE);
        Arrays.fill(pairs, -1);
    }

    int grade(WrittenName name, int code) {
        int own = name.own();
        long pair = (long) own << 32 | code;
        int slot = ListNumbering.mix(own, code) & SLOTS - 1;
        if (pairs[slot] != pair) {
            grades[slot] = (byte) compared.grade(name.text(), names.text(code), bothCommon(name, code));
            pairs[slot] = pair;
        }
        return grades[slot];
    }

    /** Whether each is borne by enough voters to be no misspelling of the other. */
    boolean bothCommon(WrittenName name, int code) {
        int own = name.own();
        return own >= 0 && names.count(own) >= commonFrom && names.count(code) >= commonFrom;
    }
}
