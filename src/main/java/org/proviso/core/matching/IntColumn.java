package org.proviso.core.matching;

import java.util.Arrays;

/** A growing row of numbers without boxes. */
final class IntColumn {

    private int[] values = new int[1024];
    private int size;

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

    void copyTo(int[] target, int place) {
        System.arraycopy(values, 0, target, place, size);
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

    int[] trimmed() {
        return Arrays.copyOf(values, size);
    }
}
