package org.proviso.sample.signature;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.proviso.sample.county.WordList;

/** The skeletons of written letters: where the pen goes, in units of the height of a small letter. */
final class LetterShapes {

    /** A place of the pen; x to the right, y up from the baseline. */
    record Point(double x, double y) {}

    private final Map<Character, List<Point>> skeletons = new HashMap<>();

    LetterShapes() {
        for (String line : WordList.lines("letters.txt")) {
            List<Point> points = Stream.of(line.substring(2).split(" "))
                    .map(LetterShapes::point)
                    .toList();
            skeletons.put(line.charAt(0), points);
        }
    }

    private static Point point(String pair) {
        int comma = pair.indexOf(',');
        return new Point(Double.parseDouble(pair.substring(0, comma)), Double.parseDouble(pair.substring(comma + 1)));
    }

    List<Point> skeleton(char letter) {
        return skeletons.get(letter);
    }

    /** The letters of a name that are written, without accents and signs; words stay apart. */
    static String written(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD).replaceAll("[\\p{M}'.]", "");
        return plain.replace('-', ' ').replaceAll("[^A-Za-z ]", "");
    }
}
