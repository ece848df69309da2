package org.proviso.files.csv;

import java.util.Arrays;

/** A growing row of long numbers without boxes. */
public final class LongColumn {

    private long[] values = new long[1024];
    private int size;

    public void add(long value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, size + (size >> 1));
        }
        values[size++] = value;
    }

    int size() {
        return size;
    }

    long get(int index) {
        return values[index];
    }
}
