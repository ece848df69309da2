package org.proviso.core.adjudication.explain;

import java.util.Locale;

/** A match in words, with the figure behind it. */
public final class MatchWords {

    private MatchWords() {}

    /** {@code almost certainly (99.8 %)}. The words are ours; the figure is the match's probability. */
    public static String words(double probability) {
        String word = probability >= 0.99
                ? "almost certainly"
                : probability >= 0.9 ? "likely" : probability >= 0.2 ? "possibly" : "unlikely";
        return word + " (" + percent(probability) + ")";
    }

    private static String percent(double probability) {
        double shown = Math.floor(probability * 1000) / 10;
        return String.format(Locale.ROOT, "%.1f %%", shown);
    }
}
