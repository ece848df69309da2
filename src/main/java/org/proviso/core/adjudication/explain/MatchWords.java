package org.proviso.core.adjudication.explain;

import java.util.Locale;

/** A match in words, with the figure behind it. */
public final class MatchWords {

    private MatchWords() {}

    /** {@code almost certainly (99.8 %)}. The words are ours; the figure is the match's probability. */
    public static String words(double probability) {
        return likelihood(probability) + " (" + percent(probability) + ")";
    }

    /** The words alone: {@code almost certainly}. */
    public static String likelihood(double probability) {
        if (probability >= 0.99) {
            return "almost certainly";
        }
        if (probability >= 0.9) {
            return "likely";
        }
        return probability >= 0.2 ? "possibly" : "unlikely";
    }

    /** The figure alone, never rounded up: {@code 99.8 %}. */
    public static String percent(double probability) {
        double shown = Math.floor(probability * 1000) / 10;
        return String.format(Locale.ROOT, "%.1f %%", shown);
    }
}
