package org.proviso.core.matching;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Names for an invented roll, drawn as often as they are borne. Surnames and given names come from the Census Bureau's
 * 1990 tables where the open reference data lies beside the checkout; without it surnames are put together from
 * syllables, so that a benchmark runs anywhere.
 */
final class NamePool {

    private static final Path FOLDER = Path.of("..", "shared", "data", "names");

    private final String[] names;
    private final double[] upTo;

    private NamePool(List<String> names, List<Double> weights) {
        this.names = names.toArray(new String[0]);
        upTo = new double[this.names.length];
        double sum = 0;
        for (int i = 0; i < upTo.length; i++) {
            sum += weights.get(i);
            upTo[i] = sum;
        }
    }

    static boolean hasTables() {
        return Files.exists(FOLDER);
    }

    static NamePool surnames() throws IOException {
        return hasTables() ? table("us-census-1990-surnames-top20000.csv") : syllables(20_000, 3);
    }

    static NamePool givens(boolean female) throws IOException {
        return hasTables()
                ? table("us-census-1990-given-" + (female ? "female" : "male") + ".csv")
                : syllables(600, female ? 1 : 2);
    }

    /** A share printed as 0.000 is drawn by its rank. */
    private static NamePool table(String file) throws IOException {
        List<String> names = new ArrayList<>();
        List<Double> weights = new ArrayList<>();
        List<String> lines = Files.readAllLines(FOLDER.resolve(file));
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",");
            names.add(cells[1].charAt(0) + cells[1].substring(1).toLowerCase(Locale.ROOT));
            weights.add(Math.max(Double.parseDouble(cells[2]), 1.0 / Double.parseDouble(cells[0])));
        }
        return new NamePool(names, weights);
    }

    private static NamePool syllables(int count, int seed) {
        String[] starts = {"Bar", "Cel", "Dor", "Fen", "Gar", "Hol", "Jar", "Kel", "Lum", "Mor", "Nor", "Pel", "Ro"};
        String[] middles = {"a", "e", "i", "o", "an", "el", "is", "ur", "en", "il", "or", "ad"};
        String[] ends = {"wick", "stead", "by", "ton", "ford", "ley", "man", "sen", "cott", "worth", "na", "ro"};
        Random random = new Random(seed);
        List<String> names = new ArrayList<>();
        List<Double> weights = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String more =
                    i % 3 == 0 ? "" : middles[random.nextInt(12)] + (i % 3 == 1 ? "" : middles[random.nextInt(12)]);
            names.add(starts[random.nextInt(13)] + more + ends[random.nextInt(12)]);
            weights.add(1.0 / (i + 20));
        }
        return new NamePool(names, weights);
    }

    String draw(Random random) {
        int place = Arrays.binarySearch(upTo, random.nextDouble() * upTo[upTo.length - 1]);
        return names[Math.min(names.length - 1, place < 0 ? -place - 1 : place)];
    }
}
