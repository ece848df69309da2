package org.proviso.core.matching.spelling;

/** Numbers with one digit in every four bits (so that 1974 is 0x1974): writing errors are found by a few bit steps. */
public final class Digits {

    private static final int LOW_BITS = 0x11111111;
    private static final int BITS = 4;

    private Digits() {}

    /** Whether a text is of digits and nothing else. */
    static boolean only(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) < '0' || text.charAt(i) > '9') {
                return false;
            }
        }
        return true;
    }

    /** The number with its digits spread; it has eight digits at most. */
    public static int spread(int number) {
        int spread = 0;
        int shift = 0;
        for (int rest = number; rest != 0; rest /= 10) {
            spread |= rest % 10 << shift;
            shift += BITS;
        }
        return spread;
    }

    /** The number that spread digits make. */
    static int value(int spread) {
        int value = 0;
        for (int shift = 28; shift >= 0; shift -= BITS) {
            value = value * 10 + (spread >>> shift & 15);
        }
        return value;
    }

    /** Whether one digit is changed, or two neighbors are exchanged. */
    public static boolean slip(int a, int b) {
        int difference = a ^ b;
        int changed = (difference | difference >>> 1 | difference >>> 2 | difference >>> 3) & LOW_BITS;
        int count = Integer.bitCount(changed);
        return count == 1 || (count == 2 && exchanged(a, b, Integer.numberOfTrailingZeros(changed)));
    }

    private static boolean exchanged(int a, int b, int shift) {
        int left = a >>> shift & 0xff;
        int right = b >>> shift & 0xff;
        return (left >>> BITS) == (right & 15) && (left & 15) == (right >>> BITS) && (a ^ b) >>> shift <= 0xff;
    }
}
