package org.proviso.canvass;

import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/** The figures of one voting location, or of the county. A figure that nobody has noted is absent, never zero. */
public record PlaceFigures(Map<Figure, Integer> figures) {

    public PlaceFigures {
        figures = Map.copyOf(figures);
    }

    public boolean has(Figure figure) {
        return figures.containsKey(figure);
    }

    /** The number; the figure is one that {@link #has} is true for. */
    int number(Figure figure) {
        return Objects.requireNonNull(figures.get(figure), "the figure is noted");
    }

    /** The same with one figure noted. */
    public PlaceFigures with(Figure figure, int number) {
        Map<Figure, Integer> changed = new EnumMap<>(Figure.class);
        changed.putAll(figures);
        changed.put(figure, number);
        return new PlaceFigures(changed);
    }

    /** The same without one figure. */
    public PlaceFigures without(Figure figure) {
        Map<Figure, Integer> changed = new EnumMap<>(Figure.class);
        changed.putAll(figures);
        changed.remove(figure);
        return new PlaceFigures(changed);
    }

    /** Summed figure by figure. What one of them lacks, the sum lacks. */
    static PlaceFigures sum(Collection<PlaceFigures> all) {
        Map<Figure, Integer> sum = new EnumMap<>(Figure.class);
        for (Figure figure : Figure.values()) {
            if (all.stream().allMatch(figures -> figures.has(figure))) {
                sum.put(
                        figure,
                        all.stream().mapToInt(figures -> figures.number(figure)).sum());
            }
        }
        return new PlaceFigures(sum);
    }
}
