package org.proviso.sample.signature;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;

/**
 * Compresses bytes with the fixed codes of RFC 1951, section 3.2.6. Our own, because the platform's compressor gives
 * other bytes on other machines, and the sample must be the same everywhere.
 */
final class FixedDeflater {

    private static final int SHORTEST = 3;
    private static final int LONGEST = 258;
    private static final int FARTHEST = 32_768;
    /** The first length of each length code, and the first distance of each distance code (RFC 1951, 3.2.5). */
    private static final int[] LENGTHS = {
        3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 15, 17, 19, 23, 27, 31, 35, 43, 51, 59, 67, 83, 99, 115, 131, 163, 195, 227,
        258
    };

    private static final int[] DISTANCES = {
        1, 2, 3, 4, 5, 7, 9, 13, 17, 25, 33, 49, 65, 97, 129, 193, 257, 385, 513, 769, 1025, 1537, 2049, 3073, 4097,
        6145, 8193, 12289, 16385, 24577
    };

    private final byte[] data;
    private final int[] lastSeen = new int[1 << 12];
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private int bits;
    private int held;

    FixedDeflater(byte[] data) {
        this.data = data;
        Arrays.fill(lastSeen, -1);
    }

    byte[] pack() {
        low(0b011, 3);
        int at = 0;
        while (at < data.length) {
            at += step(at);
        }
        symbol(256);
        while (held > 0) {
            low(0, 1);
        }
        return out.toByteArray();
    }

    private int step(int at) {
        int distance = 0;
        int length = 0;
        for (int candidate : new int[] {1, Paper.WIDTH / 4 + 1, at - seen(at)}) {
            int reach = reach(at, candidate);
            if (reach > length) {
                length = reach;
                distance = candidate;
            }
        }
        if (length < SHORTEST) {
            symbol(data[at] & 0xff);
            return 1;
        }
        copy(length, distance);
        return length;
    }

    private int seen(int at) {
        if (at + 2 >= data.length) {
            return at;
        }
        int key =
                ((data[at] & 0xff) * 961 + (data[at + 1] & 0xff) * 31 + (data[at + 2] & 0xff)) & (lastSeen.length - 1);
        int before = lastSeen[key];
        lastSeen[key] = at;
        return before < 0 ? at : before;
    }

    private int reach(int at, int distance) {
        if (distance < 1 || distance > at || distance > FARTHEST) {
            return 0;
        }
        int length = 0;
        while (length < LONGEST && at + length < data.length && data[at + length] == data[at + length - distance]) {
            length++;
        }
        return length;
    }

    private void copy(int length, int distance) {
        int code = code(LENGTHS, length);
        symbol(257 + code);
        low(length - LENGTHS[code], code < 8 || code == 28 ? 0 : (code - 4) / 4);
        int far = code(DISTANCES, distance);
        high(far, 5);
        low(distance - DISTANCES[far], far < 4 ? 0 : (far - 2) / 2);
    }

    private static int code(int[] firsts, int value) {
        int found = Arrays.binarySearch(firsts, value);
        return found >= 0 ? found : -found - 2;
    }

    private void symbol(int symbol) {
        if (symbol < 144) {
            high(0x30 + symbol, 8);
        } else if (symbol < 256) {
            high(0x190 + symbol - 144, 9);
        } else if (symbol < 280) {
            high(symbol - 256, 7);
        } else {
            high(0xc0 + symbol - 280, 8);
        }
    }

    /** A code goes out with its highest bit first, a number with its lowest. */
    private void high(int code, int count) {
        for (int i = count - 1; i >= 0; i--) {
            low(code >> i & 1, 1);
        }
    }

    private void low(int value, int count) {
        for (int i = 0; i < count; i++) {
            bits |= (value >> i & 1) << held;
            if (++held == 8) {
                out.write(bits);
                bits = 0;
                held = 0;
            }
        }
    }
}
