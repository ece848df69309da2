package org.proviso.core.matching.index;

import org.proviso.core.matching.spelling.Soundex;

/**
 * The numbers of a block's lists: one for each pair of fields, shared by pairs only by chance. The lists of one surname
 * sound lie side by side, as its voters do, so that people of one sound are looked up in one small part of memory.
 */
public final class ListNumbering {

    private static final int SMALLEST = 1 << 10;

    /** Every pair by itself, for comparing pairs and no lists: a number of 32 bits. */
    public static final ListNumbering EXACT = new ListNumbering(new int[0], new int[0], 0);

    private final int[] bases;
    private final int[] masks;
    private final int size;

    private ListNumbering(int[] bases, int[] masks, int size) {
        this.bases = bases;
        this.masks = masks;
        this.size = size;
    }

    /** For pairs of any fields of so many voters. */
    static ListNumbering plain(int voters) {
        return new ListNumbering(new int[0], new int[0], Math.max(SMALLEST, upTo(voters)));
    }

    /** For pairs that begin with the sound of a surname; each sound has as much room as it has voters. */
    static ListNumbering bySound(RollColumns columns, TextDictionary surnames) {
        int[] counts = new int[Soundex.NUMBERS];
        for (int voter = 0; voter < columns.size(); voter++) {
            counts[surnames.sound(columns.surname(voter))]++;
        }
        int[] bases = new int[counts.length];
        int size = 0;
        for (int sound = 0; sound < counts.length; sound++) {
            int room = upTo(counts[sound]);
            bases[sound] = size;
            counts[sound] = room - 1;
            size += room;
        }
        return new ListNumbering(bases, counts, size);
    }

    private static int upTo(int count) {
        return Integer.highestOneBit(Math.max(1, count)) << 1;
    }

    int size() {
        return size;
    }

    /** The list of a pair. */
    int of(int first, int second) {
        int mixed = mix(first, second);
        return bases.length == 0 ? mixed & size - 1 : bases[first] + (mixed & masks[first]);
    }

    /** The list of a pair that is mixed already. */
    int of(int mixed) {
        return mixed & size - 1;
    }

    /** Spreads two numbers over all bits of one (the finishing steps of a 64-bit hash; constants of SplitMix64). */
    public static int mix(int a, int b) {
        long bits = (long) a << 32 ^ (b & 0xffffffffL);
        bits = (bits ^ bits >>> 30) * 0xbf58476d1ce4e5b9L;
        bits = (bits ^ bits >>> 27) * 0x94d049bb133111ebL;
        return (int) (bits ^ bits >>> 31);
    }
}
