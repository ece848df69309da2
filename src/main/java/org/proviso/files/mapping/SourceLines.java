package org.proviso.files.mapping;

import java.util.Arrays;

/** For each line of a converted file the line of the office's file. Kept is only where the distance between them changes. */
final class SourceLines {

    private int[] from = new int[8];
    private int[] distance = new int[8];
    private int size;

    /** From that line of the converted file on, lines of the office's file are so far below it (or above). */
    void add(int converted, int source) {
        int apart = source - converted;
        if (size > 0 && distance[size - 1] == apart) {
            return;
        }
        if (size == from.length) {
            from = Arrays.copyOf(from, 2 * size);
            distance = Arrays.copyOf(distance, 2 * size);
        }
        from[size] = converted;
        distance[size++] = apart;
    }

    /** The line of the office's file; the whole file, 0, stays the whole file. */
    int at(int converted) {
        int place = Arrays.binarySearch(from, 0, size, converted);
        int last = place >= 0 ? place : -place - 2;
        return converted == 0 || last < 0 ? converted : converted + distance[last];
    }

    /** Whether the two files have the same lines throughout. */
    boolean areTheSame() {
        return size == 0 || (size == 1 && distance[0] == 0);
    }
}
