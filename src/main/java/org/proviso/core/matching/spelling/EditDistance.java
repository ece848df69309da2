package org.proviso.core.matching.spelling;

/**
 * How many slips of the hand lie between two spellings: letters put in, left out or changed, and two neighbors exchanged
 * as one slip, with no other slip between these (optimal string alignment). Sources: V. Levenshtein 1966; F. Damerau 1964
 * (from memory).
 */
public final class EditDistance {

    private EditDistance() {}

    public static int optimalStringAlignment(String a, String b) {
        int[] before = new int[b.length() + 1];
        int[] last = firstRow(b.length());
        int[] row = new int[b.length() + 1];
        for (int i = 1; i <= a.length(); i++) {
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int changed = last[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(changed, 1 + Math.min(last[j], row[j - 1]));
                if (exchanged(a, i, b, j)) {
                    row[j] = Math.min(row[j], before[j - 2] + 1);
                }
            }
            int[] oldest = before;
            before = last;
            last = row;
            row = oldest;
        }
        return last[b.length()];
    }

    private static boolean exchanged(String a, int i, String b, int j) {
        return i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    }

    private static int[] firstRow(int length) {
        int[] row = new int[length + 1];
        for (int j = 0; j <= length; j++) {
            row[j] = j;
        }
        return row;
    }
}
