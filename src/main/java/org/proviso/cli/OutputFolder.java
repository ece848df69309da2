package org.proviso.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.explain.Explanation;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.files.AtomicFile;
import org.proviso.files.InputException;

/** Where a run is written. A folder that holds anything but an earlier run is left alone. */
final class OutputFolder {

    private static final String LEDGER = "ledger.jsonl";
    private static final String EXPLANATIONS = "explanations";

    private final Path folder;

    private OutputFolder(Path folder) {
        this.folder = folder;
    }

    /** The folder, if it is new, empty or an earlier run's; nothing is written yet. */
    static OutputFolder claim(Path folder) {
        if (Files.isDirectory(folder)) {
            boolean ours = Files.exists(folder.resolve(LEDGER));
            if (!ours && !entries(folder).isEmpty()) {
                throw new InputException(
                        folder.toString(),
                        0,
                        "",
                        "is not empty and does not contain an earlier run; choose another --out");
            }
        } else if (Files.exists(folder)) {
            throw new InputException(folder.toString(), 0, "", "is a file; --out needs a folder");
        }
        return new OutputFolder(folder);
    }

    void write(AdjudicationRun run) {
        try {
            Path pages = folder.resolve(EXPLANATIONS);
            Files.createDirectories(pages);
            for (Path old : entries(pages)) {
                Files.delete(old);
            }
            String asOf = DateWords.moment(run.asOf());
            for (CaseReport report : run.cases()) {
                AtomicFile.writeText(
                        pages.resolve(pageName(report)), Explanation.of(report, run.records(), run.pack(), asOf));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        RecommendationsCsv.write(run, folder.resolve("recommendations.csv"));
        AtomicFile.writeText(folder.resolve("summary.txt"), SummaryText.of(run));
        AtomicFile.writeText(folder.resolve("report.html"), ReportHtml.of(run));
        AtomicFile.writeText(folder.resolve(LEDGER), RunLedger.of(run));
    }

    /** An envelope number is the county's own and may hold anything; a file name may not. */
    static String pageName(CaseReport report) {
        return report.envelope().envelopeNo().value().replaceAll("[^A-Za-z0-9._-]", "_") + ".txt";
    }

    private static List<Path> entries(Path folder) {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
