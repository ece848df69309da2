package org.proviso.core.matching;

import java.util.Arrays;

/** A growing row of numbers without boxes. */
final class IntColumn {

    private int[] values;
    private int size;

    IntColumn() {
        this(1024);
    }

    /** With room for so many at first. */
    IntColumn(int room) {
        values = new int[Math.max(2, room)];
    }

    void add(int value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, size + (size >> 1));
        }
        values[size++] = value;
    }

    int size() {
        return size;
    }

    int get(int index) {
        return values[index];
    }

    /** Takes the numbers out, to be filled again. */
    void empty() {
        size = 0;
    }

    /** Lets go of the memory. */
    void clear() {
        values = new int[0];
        size = 0;
    }
}
