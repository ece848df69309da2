package org.proviso.bench;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Draws words as often as they are borne. */
final class Draw {

    private final List<String> words;
    private final double[] upTo;

    /** Words and the weight of each, in one order. */
    Draw(List<String> words, List<Double> weights) {
        this.words = List.copyOf(words);
        upTo = new double[words.size()];
        double sum = 0;
        for (int i = 0; i < upTo.length; i++) {
            sum += weights.get(i);
            upTo[i] = sum;
        }
    }

    String next(SplittableRandom random) {
        int place = Arrays.binarySearch(upTo, random.nextDouble() * upTo[upTo.length - 1]);
        return words.get(Math.min(upTo.length - 1, place < 0 ? -place - 1 : place));
    }
}
