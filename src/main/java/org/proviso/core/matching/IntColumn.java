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

    int[] trimmed() {
        return Arrays.copyOf(values, size);
    }
}
