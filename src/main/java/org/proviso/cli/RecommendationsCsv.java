package org.proviso.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.proviso.core.Code;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.judging.DueAsk;
import org.proviso.files.csv.CsvOutput;

/** The recommendation and outlook of each envelope, a row each, in the order of the envelopes. */
final class RecommendationsCsv {

    private static final List<String> HEADER = List.of(
            "envelope_no",
            "recommendation",
            "outlook",
            "still_open",
            "reasons",
            "asks",
            "contests",
            "voter_id",
            "probability");

    private RecommendationsCsv() {}

    static void write(AdjudicationRun run, Path file) {
        CsvOutput.write(file, HEADER, csv -> run.cases().forEach(report -> csv.row(row(report))));
    }

    private static List<String> row(CaseReport report) {
        Assessment outlook = report.outlook();
        return List.of(
                report.envelope().envelopeNo().value(),
                report.recommendation().words(),
                outlook.outcome().recommendation().words(),
                String.join("; ", report.stillOpen()),
                outlook.outcome().reasons().stream().map(Code::code).collect(Collectors.joining(";")),
                report.asks().stream().map(RecommendationsCsv::ask).collect(Collectors.joining(";")),
                String.join(";", outlook.outcome().contests()),
                report.link().voterId() == null ? "" : report.link().voterId().value(),
                String.format(Locale.ROOT, "%.4f", report.link().probability()));
    }

    private static String ask(DueAsk ask) {
        return ask.ask().code()
                + ask.deadline().map(until -> " until " + until.lastMoment()).orElse("");
    }
}
