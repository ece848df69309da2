package org.proviso.core.matching.spelling;

/**
 * Likeness of two spellings between 0 and 1: letters in common near the same place, less the pairs out of order
 * (Jaro), raised for a common beginning (Winkler). Source: W. E. Winkler, Overview of Record Linkage and Current
 * Research Directions, Census Bureau RRS2006/02, 2006.
 */
public final class JaroWinkler {

    private static final int LONGEST_PREFIX = 4;
    private static final double PREFIX_SCALE = 0.1;

    private JaroWinkler() {}

    /** Jaro's likeness; two empty texts are alike, an empty and a filled one are not. */
    public static double jaro(String a, String b) {
        if (a.equals(b)) {
            return 1;
        }
        boolean[] takenA = new boolean[a.length()];
        boolean[] takenB = new boolean[b.length()];
        double common = markCommon(a, b, takenA, takenB);
        if (common == 0) {
            return 0;
        }
        double outOfOrder = outOfOrder(a, b, takenA, takenB) / 2.0;
        return (common / a.length() + common / b.length() + (common - outOfOrder) / common) / 3;
    }

    /** Jaro's likeness raised by a tenth of what is missing for each of up to four equal first letters. */
    public static double similarity(String a, String b) {
        double jaro = jaro(a, b);
        int prefix = 0;
        int longest = Math.min(LONGEST_PREFIX, Math.min(a.length(), b.length()));
        while (prefix < longest && a.charAt(prefix) == b.charAt(prefix)) {
            prefix++;
        }
        return jaro + prefix * PREFIX_SCALE * (1 - jaro);
    }

    private static int markCommon(String a, String b, boolean[] takenA, boolean[] takenB) {
        int reach = Math.max(0, Math.max(a.length(), b.length()) / 2 - 1);
        int common = 0;
        for (int i = 0; i < a.length(); i++) {
            int end = Math.min(b.length(), i + reach + 1);
            for (int j = Math.max(0, i - reach); j < end; j++) {
                if (!takenB[j] && a.charAt(i) == b.charAt(j)) {
                    takenA[i] = true;
                    takenB[j] = true;
                    common++;
                    break;
                }
            }
        }
        return common;
    }

    private static int outOfOrder(String a, String b, boolean[] takenA, boolean[] takenB) {
        int count = 0;
        int j = 0;
        for (int i = 0; i < a.length(); i++) {
            if (takenA[i]) {
                while (!takenB[j]) {
                    j++;
                }
                count += a.charAt(i) == b.charAt(j++) ? 0 : 1;
            }
        }
        return count;
    }
}
