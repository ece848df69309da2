package org.proviso.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.concurrent.Callable;
import org.proviso.cli.option.MappingOption;
import org.proviso.cli.option.SetAsideOption;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.files.election.ElectionFolder;
import org.proviso.files.mapping.MappedFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Adjudicates a whole election folder: what the rules say of each envelope, why, and what is still to be done. */
@Command(
        name = "adjudicate",
        description = {
            "Matches every envelope in an election folder to the roll, finds the facts and applies the rules.",
            "Writes recommendations.csv, explanations/, summary.txt, report.html and ledger.jsonl. People make the decisions."
        },
        mixinStandardHelpOptions = true)
final class AdjudicateCommand implements Callable<Integer> {

    @Parameters(paramLabel = "<election folder>", description = "The folder with election.yaml and the other files.")
    private Path folder;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "DIR",
            description = "The output folder: new, empty or from an earlier run.")
    private Path out;

    @Option(
            names = "--as-of",
            paramLabel = "TIME",
            description = "Assess as of this county local time, as 2026-11-04T12:00"
                    + " (default: noon on the day after the election).")
    private LocalDateTime asOf;

    @Option(
            names = "--threads",
            paramLabel = "N",
            defaultValue = "2",
            description = "Number of threads for matching (${DEFAULT-VALUE}).")
    private int threads;

    @Mixin
    private final SetAsideOption setAside = new SetAsideOption();

    @Mixin
    private MappingOption mapping = new MappingOption();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter print = spec.commandLine().getOut();
        OutputFolder target = OutputFolder.claim(out);
        print.println("Reading " + folder + " ...");
        print.flush();
        try (MappedFolder mapped = mapping.folder(folder)) {
            mapped.warnings().forEach(warning -> print.println("warning: " + warning));
            return adjudicate(mapped.read(() -> setAside.read(mapped.folder(), print)), target, print);
        }
    }

    private int adjudicate(ElectionFolder election, OutputFolder target, PrintWriter print) {
        election.warnings().forEach(warning -> print.println("warning: " + warning));
        LocalDateTime moment =
                asOf == null ? election.election().date().plusDays(1).atTime(12, 0) : asOf;
        print.println(
                "Assessing " + election.envelopes().size() + " envelopes as of " + DateWords.moment(moment) + " ...");
        print.flush();
        AdjudicationRun run = AdjudicationRun.of(election, moment, Math.max(1, threads));
        target.write(run);
        print.print(SummaryText.of(run));
        print.println("Written to " + out + ".");
        print.flush();
        return 0;
    }
}
