package org.proviso.core.matching;

/** Puts people into the order of their surnames' sounds, those of one sound as they came. */
final class SoundOrder {

    private SoundOrder() {}

    /** The places of the people in that order. */
    static int[] of(Claim[] claims) {
        int[] sounds = new int[claims.length];
        int[] next = new int[Soundex.NUMBERS + 1];
        for (int i = 0; i < claims.length; i++) {
            sounds[i] = Soundex.number(claims[i].name().surname());
            next[sounds[i] + 1]++;
        }
        for (int sound = 1; sound < next.length; sound++) {
            next[sound] += next[sound - 1];
        }
        int[] order = new int[claims.length];
        for (int i = 0; i < claims.length; i++) {
            order[next[sounds[i]]++] = i;
        }
        return order;
    }
}
