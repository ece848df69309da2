package org.proviso.core.matching;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Many short texts in one row of bytes, found again by their place. */
final class TextArena {

    private byte[] bytes = new byte[16 * 1024];
    private final IntColumn ends = new IntColumn();
    private int[] places = new int[0];
    private int size;

    void add(String text) {
        byte[] added = text.getBytes(StandardCharsets.UTF_8);
        if (size + added.length > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(size + added.length, bytes.length + (bytes.length >> 1)));
        }
        System.arraycopy(added, 0, bytes, size, added.length);
        size += added.length;
        ends.add(size);
    }

    void freeze() {
        bytes = Arrays.copyOf(bytes, size);
        places = ends.trimmed();
    }

    String get(int index) {
        int start = index == 0 ? 0 : places[index - 1];
        return new String(bytes, start, places[index] - start, StandardCharsets.UTF_8);
    }
}
