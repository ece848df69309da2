package org.proviso.cli;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.explain.OutcomeSymbol;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.files.flow.EnvelopeFlow;
import org.proviso.files.flow.EnvelopeFlowEnd;

/** How many envelopes went from each reason of issue to each outlook; of several reasons the first one stands. */
record OutlookFlow(Map<String, Map<Recommendation, Integer>> counts) {

    static OutlookFlow of(List<CaseReport> cases) {
        Map<String, Map<Recommendation, Integer>> counts = new LinkedHashMap<>();
        for (CaseReport report : cases) {
            counts.computeIfAbsent(reason(report), any -> new EnumMap<>(Recommendation.class))
                    .merge(report.outlook().outcome().recommendation(), 1, Integer::sum);
        }
        Map<String, Map<Recommendation, Integer>> sorted = new LinkedHashMap<>();
        counts.entrySet().stream()
                .sorted(Comparator.comparingInt(
                                (Map.Entry<String, Map<Recommendation, Integer>> entry) -> -sum(entry.getValue()))
                        .thenComparing(Map.Entry.comparingByKey()))
                .forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
        return new OutlookFlow(sorted);
    }

    /** The same, ready to be drawn. */
    EnvelopeFlow drawn() {
        Map<String, Map<EnvelopeFlowEnd, Integer>> rows = new LinkedHashMap<>();
        counts.forEach((reason, row) -> {
            Map<EnvelopeFlowEnd, Integer> drawn = new LinkedHashMap<>();
            row.forEach((outlook, number) -> drawn.put(end(outlook), number));
            rows.put(reason, drawn);
        });
        return EnvelopeFlow.of(
                rows, Stream.of(Recommendation.values()).map(OutlookFlow::end).toList());
    }

    private static EnvelopeFlowEnd end(Recommendation outlook) {
        return new EnvelopeFlowEnd(
                OutcomeSymbol.beside(outlook), outlook.words().replace(' ', '-'));
    }

    int from(String reason) {
        return sum(counts.getOrDefault(reason, Map.of()));
    }

    int to(Recommendation outlook) {
        return counts.values().stream()
                .mapToInt(row -> row.getOrDefault(outlook, 0))
                .sum();
    }

    int all() {
        return counts.values().stream().mapToInt(OutlookFlow::sum).sum();
    }

    private static int sum(Map<Recommendation, Integer> row) {
        return row.values().stream().mapToInt(Integer::intValue).sum();
    }

    private static String reason(CaseReport report) {
        return report.envelope().cast().issueReasons().stream()
                .findFirst()
                .map(DateWords::code)
                .orElse("no reason stated");
    }
}
