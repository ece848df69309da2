package org.proviso.core.matching;

import java.util.Arrays;
import org.proviso.core.matching.spelling.Soundex;

/** Puts people into the order of their surnames' sounds, within a sound those of one surname together, as they came. */
final class SoundOrder {

    /** How many people there may be. */
    static final int MOST = 1 << 16;

    private static final int NAME_AT = 16;
    private static final int SOUND_AT = 48;

    private SoundOrder() {}

    /** The places of the people in that order. */
    static int[] of(EnvelopePerson[] claims) {
        long[] keys = new long[claims.length];
        for (int i = 0; i < claims.length; i++) {
            String surname = claims[i].name().surname();
            keys[i] = (long) Soundex.number(surname) << SOUND_AT | (surname.hashCode() & 0xffffffffL) << NAME_AT | i;
        }
        Arrays.sort(keys);
        int[] order = new int[claims.length];
        for (int i = 0; i < claims.length; i++) {
            order[i] = (int) keys[i] & MOST - 1;
        }
        return order;
    }
}
