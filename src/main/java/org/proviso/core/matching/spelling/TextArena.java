package org.proviso.core.matching.spelling;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.proviso.core.VoterId;

/** Many short texts in one row of bytes, found again by their place. */
public final class TextArena {

    private byte[] bytes = new byte[16 * 1024];
    private final IntColumn ends = new IntColumn();
    private int[] places = new int[0];
    private int size;

    public void add(VoterId text) {
        byte[] added = text.value().getBytes(StandardCharsets.UTF_8);
        add(added, 0, added.length);
    }

    /** A text as bytes of UTF-8, from a place to before another. */
    public void add(byte[] text, int from, int to) {
        int length = to - from;
        if (size + length > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(size + length, bytes.length + (bytes.length >> 1)));
        }
        System.arraycopy(text, from, bytes, size, length);
        size += length;
        ends.add(size);
    }

    /** All texts of several, one after another. */
    public static TextArena joined(List<TextArena> parts) {
        TextArena joined = new TextArena();
        joined.bytes = new byte[parts.stream().mapToInt(part -> part.size).sum()];
        joined.places =
                new int[parts.stream().mapToInt(part -> part.ends.size()).sum()];
        int place = 0;
        for (TextArena part : parts) {
            System.arraycopy(part.bytes, 0, joined.bytes, joined.size, part.size);
            for (int i = 0; i < part.ends.size(); i++) {
                joined.places[place++] = joined.size + part.ends.get(i);
            }
            joined.size += part.size;
        }
        return joined;
    }

    /** Whether a text begins so; capitals and small letters of ASCII are alike. */
    public boolean begins(int index, String beginning) {
        int start = index == 0 ? 0 : places[index - 1];
        if (places[index] - start < beginning.length()) {
            return false;
        }
        for (int i = 0; i < beginning.length(); i++) {
            if (Character.toUpperCase((char) bytes[start + i]) != Character.toUpperCase(beginning.charAt(i))) {
                return false;
            }
        }
        return true;
    }

    public String get(int index) {
        int start = index == 0 ? 0 : places[index - 1];
        return new String(bytes, start, places[index] - start, StandardCharsets.UTF_8);
    }
}
