package org.proviso.files;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** How many rows of which list were set aside, counted as they go past. Not thread-safe. */
public final class SetAsideCount implements SetAside {

    private final SetAside next;
    private final Map<String, Integer> counts = new TreeMap<>();

    public SetAsideCount(SetAside next) {
        this.next = next;
    }

    @Override
    public void take(SetAsideRow row) {
        counts.merge(row.list(), 1, Integer::sum);
        next.take(row);
    }

    /** By the name of the file; a list of which none was set aside is not in it. */
    public Map<String, Integer> counts() {
        return Map.copyOf(counts);
    }

    public int total() {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** {@code 2 rows of check-ins.csv, 1 row of roll.csv}; {@code no rows}. */
    public static String words(Map<String, Integer> counts) {
        return counts.isEmpty()
                ? "no rows"
                : new TreeMap<>(counts)
                        .entrySet().stream()
                                .map(count -> String.format(Locale.US, "%,d", count.getValue())
                                        + (count.getValue() == 1 ? " row of " : " rows of ")
                                        + count.getKey())
                                .collect(Collectors.joining(", "));
    }
}
