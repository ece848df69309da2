package org.proviso.core.matching;

import java.util.Arrays;

/** A set of voters' places that is emptied and filled again without making garbage. */
final class VoterSet {

    private final int[] members;
    private final int[] table;
    private int size;

    VoterSet(int capacity) {
        members = new int[capacity];
        table = new int[Integer.highestOneBit(capacity) << 2];
        Arrays.fill(table, -1);
    }

    void add(int voter) {
        int slot = slot(voter);
        if (table[slot] < 0) {
            table[slot] = voter;
            members[size++] = voter;
        }
    }

    private int slot(int voter) {
        int slot = (voter * 0x9e3779b9 >>> 7) & (table.length - 1);
        while (table[slot] >= 0 && table[slot] != voter) {
            slot = (slot + 1) & (table.length - 1);
        }
        return slot;
    }

    /** Empties only the slots in use; a slot holds a member, so the walk by members finds each. */
    void clear() {
        if (size > table.length / 8) {
            Arrays.fill(table, -1);
        } else {
            clearSlots();
        }
        size = 0;
    }

    private void clearSlots() {
        int[] slots = new int[size];
        for (int i = 0; i < size; i++) {
            slots[i] = slot(members[i]);
        }
        for (int slot : slots) {
            table[slot] = -1;
        }
    }

    int size() {
        return size;
    }

    int get(int index) {
        return members[index];
    }
}
