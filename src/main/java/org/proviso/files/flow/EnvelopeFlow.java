package org.proviso.files.flow;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How many envelopes went from each reason of issue to each outcome; the reason with the most comes first. */
public record EnvelopeFlow(Map<String, Map<EnvelopeFlowEnd, Integer>> counts, List<EnvelopeFlowEnd> ends) {

    /** Sorts the rows; {@code ends} has the outcomes in the order in which they are drawn. */
    public static EnvelopeFlow of(Map<String, Map<EnvelopeFlowEnd, Integer>> counts, List<EnvelopeFlowEnd> ends) {
        Map<String, Map<EnvelopeFlowEnd, Integer>> sorted = new LinkedHashMap<>();
        counts.entrySet().stream()
                .sorted(Comparator.comparingInt((Map.Entry<String, Map<EnvelopeFlowEnd, Integer>> row) ->
                                -sum(row.getValue().values()))
                        .thenComparing(Map.Entry.comparingByKey()))
                .forEach(row -> sorted.put(row.getKey(), row.getValue()));
        return new EnvelopeFlow(sorted, ends);
    }

    /** How many came from a reason. */
    public int from(String reason) {
        return sum(counts.getOrDefault(reason, Map.of()).values());
    }

    /** How many went to an outcome. */
    public int to(EnvelopeFlowEnd end) {
        return counts.values().stream()
                .mapToInt(row -> row.getOrDefault(end, 0))
                .sum();
    }

    public int all() {
        return counts.values().stream().mapToInt(row -> sum(row.values())).sum();
    }

    private static int sum(Collection<Integer> numbers) {
        return numbers.stream().mapToInt(Integer::intValue).sum();
    }
}
