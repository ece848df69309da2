package org.proviso.core.matching;

/** Slips in numbers of equal length. */
final class Digits {

    private Digits() {}

    /** Whether one digit is changed, or two neighbors are exchanged. */
    static boolean slip(int a, int b) {
        int changed = 0;
        int place = 1;
        int firstGap = 0;
        for (int x = a, y = b; x != 0 || y != 0; x /= 10, y /= 10) {
            if (x % 10 != y % 10) {
                changed++;
                firstGap = changed == 1 ? place : firstGap;
            }
            place *= 10;
        }
        return changed == 1 || changed == 2 && exchanged(a / firstGap, b / firstGap);
    }

    private static boolean exchanged(int a, int b) {
        return a % 10 == b / 10 % 10 && b % 10 == a / 10 % 10;
    }
}
