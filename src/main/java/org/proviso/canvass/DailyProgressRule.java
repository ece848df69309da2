package org.proviso.canvass;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The tenth identity: what was received, decided and counted never becomes less from one day to the next, unless a
 * correction of that many is logged.
 */
public enum DailyProgressRule {
    RECEIVED("received", List.of(Figure.RECEIVED)),
    DECIDED("decided", List.of(Figure.COUNTED, Figure.COUNTED_IN_PART, Figure.REJECTED)),
    COUNTED("counted", List.of(Figure.COUNTED, Figure.COUNTED_IN_PART));

    private final String words;
    private final List<Figure> figures;

    DailyProgressRule(String words, List<Figure> figures) {
        this.words = words;
        this.figures = figures;
    }

    /** A sentence for each number that became less than the corrections logged explain; empty where all is well. */
    public static List<String> fallen(
            PlaceFigures before, PlaceFigures after, Map<DailyProgressRule, Integer> corrections) {
        List<String> fallen = new ArrayList<>();
        for (DailyProgressRule rule : values()) {
            rule.lost(before, after, corrections.getOrDefault(rule, 0)).ifPresent(fallen::add);
        }
        return fallen;
    }

    private Optional<String> lost(PlaceFigures before, PlaceFigures after, int corrected) {
        List<Figure> missing = figures.stream()
                .filter(figure -> !before.has(figure) || !after.has(figure))
                .toList();
        if (!missing.isEmpty()) {
            return Optional.of("It cannot be checked that no fewer are " + words + " than before.");
        }
        int was = sum(before);
        int now = sum(after);
        return now >= was - corrected
                ? Optional.empty()
                : Optional.of(now + " are " + words + ", and " + was + " were before; a correction of " + corrected
                        + " is logged.");
    }

    private int sum(PlaceFigures counts) {
        return figures.stream().mapToInt(counts::number).sum();
    }
}
