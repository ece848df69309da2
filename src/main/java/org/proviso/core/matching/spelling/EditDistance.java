package org.proviso.core.matching.spelling;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * How many slips of the hand lie between two spellings. Levenshtein counts letters put in, left out or changed; optimal
 * string alignment counts two neighbors exchanged as one slip; Damerau-Levenshtein also lets other slips fall between
 * the two exchanged letters. Sources: V. Levenshtein 1966; F. Damerau 1964; R. Lowrance and R. Wagner 1975 (from memory).
 */
public final class EditDistance {

    private EditDistance() {}

    public static int levenshtein(String a, String b) {
        int[] row = firstRow(b.length());
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int changed = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }

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

    public static int damerauLevenshtein(String a, String b) {
        int far = a.length() + b.length();
        int[][] cost = new int[a.length() + 2][b.length() + 2];
        Arrays.fill(cost[0], far);
        for (int i = 0; i <= a.length(); i++) {
            cost[i + 1][0] = far;
            cost[i + 1][1] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            cost[1][j + 1] = j;
        }
        Map<Character, Integer> lastRowOf = new HashMap<>();
        for (int i = 1; i <= a.length(); i++) {
            fillRow(a, i, b, cost, lastRowOf);
            lastRowOf.put(a.charAt(i - 1), i);
        }
        return cost[a.length() + 1][b.length() + 1];
    }

    private static void fillRow(String a, int i, String b, int[][] cost, Map<Character, Integer> lastRowOf) {
        int lastMatch = 0;
        for (int j = 1; j <= b.length(); j++) {
            int row = lastRowOf.getOrDefault(b.charAt(j - 1), 0);
            int exchange = cost[row][lastMatch] + (i - row - 1) + 1 + (j - lastMatch - 1);
            boolean same = a.charAt(i - 1) == b.charAt(j - 1);
            int changed = cost[i][j] + (same ? 0 : 1);
            int moved = 1 + Math.min(cost[i + 1][j], cost[i][j + 1]);
            cost[i + 1][j + 1] = Math.min(exchange, Math.min(changed, moved));
            lastMatch = same ? j : lastMatch;
        }
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
