package org.proviso.canvass;

import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;

/** Adds up figures by place. A place that was named has each of its own figures, if only as zero. */
final class FigureSums {

    private final Map<String, Map<Figure, Integer>> places = new TreeMap<>();

    void add(String place, Figure figure, int number) {
        of(place).merge(figure, number, Integer::sum);
    }

    void set(String place, Figure figure, int number) {
        of(place).put(figure, number);
    }

    /** Lets a place have these figures, as zero where it has none. */
    void atLeastZero(String place, Figure... figures) {
        for (Figure figure : figures) {
            of(place).putIfAbsent(figure, 0);
        }
    }

    private Map<Figure, Integer> of(String place) {
        return places.computeIfAbsent(place, any -> new EnumMap<>(Figure.class));
    }

    Map<String, PlaceFigures> counts() {
        Map<String, PlaceFigures> counts = new TreeMap<>();
        places.forEach((place, figures) -> counts.put(place, new PlaceFigures(figures)));
        return counts;
    }
}
