package org.proviso.core.matching.spelling;

import java.util.Arrays;

/** A growing row of numbers without boxes. */
public final class IntColumn {

    private int[] values;
    private int size;

    public IntColumn() {
        this(1024);
    }

    /** With room for so many at first. */
    public IntColumn(int room) {
        values = new int[Math.max(2, room)];
    }

    public void add(int value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, size + (size >> 1));
        }
        values[size++] = value;
    }

    public int size() {
        return size;
    }

    public int get(int index) {
        return values[index];
    }

    /** Takes the numbers out, to be filled again. */
    public void empty() {
        size = 0;
    }

    /** Lets go of the memory. */
    public void clear() {
        values = new int[0];
        size = 0;
    }
}
