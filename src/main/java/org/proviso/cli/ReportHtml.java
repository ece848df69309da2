package org.proviso.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.explain.OutcomeSymbol;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.files.flow.EnvelopeFlowDrawing;

/**
 * A run on one page of HTML that needs nothing from elsewhere: where the envelopes went, as a picture and as a table,
 * and the line of each envelope. It shows no names and no addresses.
 */
final class ReportHtml {

    private final AdjudicationRun run;
    private final OutlookFlow flow;
    private final StringBuilder html = new StringBuilder();

    private ReportHtml(AdjudicationRun run) {
        this.run = run;
        this.flow = OutlookFlow.of(run.cases());
    }

    static String of(AdjudicationRun run) {
        ReportHtml report = new ReportHtml(run);
        report.head();
        report.picture();
        report.flowTable();
        report.envelopes();
        report.html.append("</main>\n</body>\n</html>\n");
        return report.html.toString();
    }

    private void head() {
        String title = Html.escape(run.election().name());
        html.append("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>")
                .append(title)
                .append(": provisional ballot outlook</title>\n<style>\n")
                .append(css())
                .append("</style>\n</head>\n<body>\n<main>\n<h1>")
                .append(title)
                .append("</h1>\n");
        paragraph(
                "soft",
                DateWords.longDate(run.election().date()) + ". " + run.cases().size()
                        + " envelopes, assessed as of " + DateWords.moment(run.asOf()) + " under rule pack "
                        + run.pack().pack().id() + " " + run.pack().hash().substring(0, 12) + ".");
        paragraph(
                "",
                "The outlook is what the rules will say if the open questions are answered as the records suggest. It is for"
                        + " sorting the work and is never a decision.");
        paragraph("", run.pack().pack().caution());
    }

    private void picture() {
        html.append("<h2>Outlook by reason issued</h2>\n<div class=\"scroll\" tabindex=\"0\" role=\"region\"")
                .append(" aria-label=\"Picture, scrolls sideways\">\n")
                .append(EnvelopeFlowDrawing.of(
                        flow.drawn(), "From reason issued to outlook; the table below has the same figures"))
                .append("</div>\n");
    }

    private void flowTable() {
        html.append("<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-label=\"Table, scrolls sideways\">\n")
                .append("<table>\n<caption>Reason issued (first one listed) and outlook</caption>\n")
                .append("<thead><tr><th scope=\"col\">Reason issued</th>");
        for (Recommendation outlook : Recommendation.values()) {
            html.append("<th class=\"n\" scope=\"col\">")
                    .append(OutcomeSymbol.beside(outlook))
                    .append("</th>");
        }
        html.append("<th class=\"n\" scope=\"col\">Total</th></tr></thead>\n<tbody>\n");
        flow.counts().forEach(this::flowRow);
        html.append("<tr><th scope=\"row\">Total</th>");
        for (Recommendation outlook : Recommendation.values()) {
            number(flow.to(outlook));
        }
        number(flow.all());
        html.append("</tr>\n</tbody>\n</table>\n</div>\n");
    }

    private void flowRow(String reason, Map<Recommendation, Integer> row) {
        html.append("<tr><th scope=\"row\">").append(Html.escape(reason)).append("</th>");
        for (Recommendation outlook : Recommendation.values()) {
            number(row.getOrDefault(outlook, 0));
        }
        number(flow.from(reason));
        html.append("</tr>\n");
    }

    private void number(int number) {
        html.append("<td class=\"n\">").append(number).append("</td>");
    }

    private void envelopes() {
        html.append("<h2>All envelopes</h2>\n<div class=\"scroll\" tabindex=\"0\" role=\"region\"")
                .append(" aria-label=\"Table of envelopes, scrolls sideways\">\n<table>\n<thead><tr>")
                .append("<th scope=\"col\">Envelope</th><th scope=\"col\">Outlook</th><th scope=\"col\">Reason</th>")
                .append("<th scope=\"col\">Still to do</th></tr></thead>\n<tbody>\n");
        run.cases().forEach(this::envelope);
        html.append("</tbody>\n</table>\n</div>\n");
    }

    private void envelope(CaseReport report) {
        String reasons = String.join(
                "; ",
                report.outlook().outcome().reasons().stream()
                        .map(reason -> reason.words())
                        .toList());
        html.append("<tr><th scope=\"row\"><a href=\"explanations/")
                .append(Html.escape(OutputFolder.pageName(report)))
                .append("\">")
                .append(Html.escape(report.envelope().envelopeNo().value()))
                .append("</a></th><td>")
                .append(OutcomeSymbol.beside(report.outlook().outcome().recommendation()))
                .append("</td><td>")
                .append(Html.escape(reasons))
                .append("</td><td>")
                .append(Html.escape(String.join("; ", report.stillOpen())))
                .append("</td></tr>\n");
    }

    private void paragraph(String style, String words) {
        html.append(style.isEmpty() ? "<p>" : "<p class=\"" + style + "\">")
                .append(Html.escape(words))
                .append("</p>\n");
    }

    private static String css() {
        try (InputStream stream = ReportHtml.class.getResourceAsStream("report.css")) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
