package org.proviso.core.matching.index;

import java.util.Arrays;

/**
 * A set of voters' places that is emptied and filled again without making garbage. It uses no more of its table than the
 * next filling needs, so that a small one stays in the processor's cache.
 */
public final class VoterSet {

    private static final int SMALLEST = 256;

    private final int[] members;
    private final int[] table;
    private int size;
    private int mask;

    public VoterSet(int capacity) {
        members = new int[capacity];
        table = new int[Integer.highestOneBit(capacity) << 2];
        clear();
    }

    public void clear() {
        mask = SMALLEST - 1;
        Arrays.fill(table, 0, SMALLEST, -1);
        size = 0;
    }

    /** Makes room for so many voters more; those beyond the set's capacity are not taken. */
    public void expect(int more) {
        int wanted = Math.min(members.length, size + more);
        int slots = Math.min(table.length, Integer.highestOneBit(Math.max(1, wanted)) << 2);
        if (slots > mask + 1) {
            mask = slots - 1;
            Arrays.fill(table, 0, slots, -1);
            for (int i = 0; i < size; i++) {
                table[slotOf(members[i])] = members[i];
            }
        }
    }

    public void add(int voter) {
        int slot = slotOf(voter);
        if (table[slot] < 0 && size < members.length) {
            table[slot] = voter;
            members[size++] = voter;
        }
    }

    /** The voter's place, or the free place for it. */
    private int slotOf(int voter) {
        int slot = (voter * 0x9e3779b9) >>> 7 & mask;
        while (table[slot] >= 0 && table[slot] != voter) {
            slot = slot + 1 & mask;
        }
        return slot;
    }

    public int size() {
        return size;
    }

    public int get(int index) {
        return members[index];
    }
}
