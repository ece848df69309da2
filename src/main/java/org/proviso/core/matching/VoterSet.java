package org.proviso.core.matching;

import java.util.Arrays;

/**
 * A set of voters' places that is emptied and filled again without making garbage. It uses no more of its table than the
 * next filling needs, so that a small one stays in the processor's cache.
 */
final class VoterSet {

    private static final int SMALLEST = 64;

    private final int[] members;
    private final int[] table;
    private int size;
    private int mask;

    VoterSet(int capacity) {
        members = new int[capacity];
        table = new int[Integer.highestOneBit(capacity) << 2];
        clear(0);
    }

    /** Empties the set for so many voters at most; those beyond its capacity are not taken. */
    void clear(int expected) {
        int wanted = Math.max(SMALLEST, Math.min(members.length, expected));
        mask = Math.min(table.length, Integer.highestOneBit(wanted) << 2) - 1;
        Arrays.fill(table, 0, mask + 1, -1);
        size = 0;
    }

    void add(int voter) {
        int slot = voter * 0x9e3779b9 >>> 7 & mask;
        while (table[slot] >= 0) {
            if (table[slot] == voter) {
                return;
            }
            slot = slot + 1 & mask;
        }
        table[slot] = voter;
        members[size++] = voter;
    }

    int size() {
        return size;
    }

    int get(int index) {
        return members[index];
    }
}
