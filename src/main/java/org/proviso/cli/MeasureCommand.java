package org.proviso.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.proviso.core.Envelope;
import org.proviso.core.adjudication.Adjudicator;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.Link;
import org.proviso.files.ElectionFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Measures how long assessing takes: finding the facts of each envelope and answering every question three ways. */
@Command(
        name = "measure",
        description = {
            "Assesses the envelopes of an election folder over and over and prints how long it took.",
            "Each time the facts are found anew, and the case is assessed as it stands, over the presumed link,",
            "and as its outlook. Matching is not part of it."
        },
        mixinStandardHelpOptions = true)
final class MeasureCommand implements Callable<Integer> {

    @Parameters(paramLabel = "<election folder>", description = "The folder with election.yaml and its files.")
    private Path folder;

    @Option(
            names = "--envelopes",
            paramLabel = "N",
            defaultValue = "100000",
            description = "How many to assess (${DEFAULT-VALUE}).")
    private int envelopes;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        ElectionFolder election = ElectionFolder.read(folder);
        LocalDateTime moment = election.election().date().plusDays(1).atTime(12, 0);
        AdjudicationRun run = AdjudicationRun.of(election, moment, 2);
        List<Envelope> all = election.envelopes();
        List<Link> links = run.cases().stream().map(CaseReport::link).toList();
        Adjudicator adjudicator = new Adjudicator(run.records(), run.book(), moment);
        long start = System.nanoTime();
        long answers = 0;
        for (int i = 0; i < envelopes; i++) {
            CaseReport one = adjudicator.report(all.get(i % all.size()), links.get(i % all.size()));
            answers += one.settled().answered().size();
        }
        double seconds = (System.nanoTime() - start) / 1e9;
        PrintWriter out = spec.commandLine().getOut();
        out.println(String.format(
                Locale.US,
                "%,d envelopes assessed in %.2f s (%,.0f a second), %,d answers each way",
                envelopes,
                seconds,
                envelopes / seconds,
                answers));
        return 0;
    }
}
